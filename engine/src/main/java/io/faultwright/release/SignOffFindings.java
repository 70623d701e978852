package io.faultwright.release;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.SignOff;
import io.faultwright.model.Signed;
import io.faultwright.model.SignedKind;
import java.util.List;
import java.util.stream.Stream;

/** What about sign-offs stands in the way of a release. */
public final class SignOffFindings {
  private static final int SHOWN = 3;

  private final KnowledgeBase kb;

  public SignOffFindings(KnowledgeBase kb) {
    this.kb = kb;
  }

  public List<Finding> of(List<SignOffState> states) {
    return states.stream().flatMap(this::of).toList();
  }

  private Stream<Finding> of(SignOffState state) {
    return Stream.concat(
        state.missing().stream().map(role -> missing(state, role)),
        state.signatures().stream()
            .filter(signature -> !signature.holds())
            .map(signature -> within(state, broken(state, signature))));
  }

  private Finding missing(SignOffState state, String role) {
    return within(
        state,
        Finding.of(
            FindingKind.MISSING_SIGNATURE,
            state.place(),
            state.of().words() + " is not signed as `" + role + "`",
            "read it and sign it: `" + command(state.of(), role) + "`"));
  }

  private Finding broken(SignOffState state, Signature signature) {
    SignOff signOff = signature.signOff();
    return Finding.of(
        kind(signature),
        List.of(state.place(), signOff.place()),
        message(signature),
        help(signature));
  }

  private static FindingKind kind(Signature signature) {
    return switch (signature.standing()) {
      case BROKEN -> FindingKind.BROKEN_SIGNATURE;
      case OWN -> FindingKind.OWN_SIGNATURE;
      default -> FindingKind.LAPSED_SIGNATURE;
    };
  }

  private static String message(Signature signature) {
    SignOff signOff = signature.signOff();
    String what = signOff.of().words();
    return switch (signature.standing()) {
      case BROKEN ->
          "the signature of "
              + who(signOff)
              + " under "
              + what
              + " does not count: "
              + signature.proof().reason();
      case OWN ->
          signOff.author().isEmpty()
              ? "the sign-off of " + what + " by " + who(signOff) + " does not say who wrote it"
              : "`"
                  + signOff.name()
                  + "` wrote "
                  + what
                  + " and signed it as `"
                  + signOff.role()
                  + "`";
      default ->
          what
              + " is not what "
              + who(signOff)
              + " signed on "
              + signOff.date()
              + ": "
              + changes(signature.changed());
    };
  }

  private static String who(SignOff signOff) {
    return "`" + signOff.name() + "` (`" + signOff.role() + "`)";
  }

  private static String changes(List<String> changed) {
    if (changed.isEmpty()) {
      return "the hash of the meaning is another one";
    }
    String shown = String.join(", ", changed.subList(0, Math.min(SHOWN, changed.size())));
    int more = changed.size() - SHOWN;
    return more > 0 ? shown + " and " + more + " more" : shown;
  }

  private static String help(Signature signature) {
    SignOff signOff = signature.signOff();
    String again = "`" + command(signOff.of(), signOff.role()) + "`";
    return switch (signature.standing()) {
      case BROKEN -> "let that person sign again with their key: " + again;
      case OWN -> "let somebody sign it who did not write it, and say who wrote it: " + again;
      default -> "read what changed, and sign again: " + again;
    };
  }

  private static String command(Signed signed, String role) {
    return "faultwright sign KB " + signed + " --role " + role + " …";
  }

  private Finding within(SignOffState state, Finding finding) {
    Signed of = state.of();
    List<String> rules =
        of.kind() == SignedKind.RULE
            ? List.of(of.id().substring(of.id().indexOf('/') + 1))
            : List.of();
    Finding placed = of.symptom(kb).map(symptom -> finding.in(symptom, rules)).orElse(finding);
    return of.kind() == SignedKind.CHART ? placed.onChart(of.id()) : placed;
  }
}
