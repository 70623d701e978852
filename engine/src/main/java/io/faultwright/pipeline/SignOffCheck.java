package io.faultwright.pipeline;

import io.faultwright.finding.Finding;
import io.faultwright.release.SignOffFindings;
import io.faultwright.release.SignOffState;
import io.faultwright.release.SignOffStates;
import io.faultwright.release.SignatureCheck;
import java.util.List;
import java.util.SortedMap;

/** Looks whether everything is signed that has to be before a release. */
public final class SignOffCheck {
  private final Checked checked;
  private final List<SignOffState> states;

  /**
   * @param checked what the check found apart from sign-offs
   * @param pictures that guides may show, by path in the {@code guides} folder
   * @param signatures looks at signatures with keys
   */
  public SignOffCheck(
      Checked checked, SortedMap<String, byte[]> pictures, SignatureCheck signatures) {
    this.checked = checked;
    this.states =
        new SignOffStates(checked.knowledge(), checked.signOffs(), pictures, signatures).all();
  }

  /** Everything that can be signed, by kind and id. */
  public List<SignOffState> states() {
    return states;
  }

  /** What was found, with what about sign-offs stands in the way of a release. */
  public Checked checked(Scope scope) {
    List<Finding> findings = new SignOffFindings(checked.knowledge()).of(states);
    return checked.with(findings.stream().filter(scope::concerns).toList());
  }
}
