package io.faultwright.analysis.change;

import io.faultwright.change.ChangedRegion;
import io.faultwright.change.SymptomChange;
import io.faultwright.finding.Share;
import io.faultwright.model.Build;
import io.faultwright.model.Situation;
import java.util.List;
import java.util.Optional;

/** Finds every situation of a symptom whose outcome changed; none is a proof that none did. */
public final class ChangeAnalysis {
  private final Joined joined;
  private final SymptomScope before;
  private final SymptomScope after;

  /**
   * For a symptom that both revisions have.
   *
   * @param symptom its id
   */
  public ChangeAnalysis(Joined joined, String symptom) {
    this.joined = joined;
    List<SymptomScope> scopes =
        SymptomScope.of(
            joined,
            joined.before().own().symptoms().get(symptom),
            joined.after().own().symptoms().get(symptom));
    this.before = scopes.get(0);
    this.after = scopes.get(1);
  }

  /** A shared situation as the old revision would be told it. */
  public Situation asBefore(Situation shared) {
    return OwnSituation.of(joined, before, shared);
  }

  /** A shared situation as the new revision would be told it. */
  public Situation asAfter(Situation shared) {
    return OwnSituation.of(joined, after, shared);
  }

  /** Every situation with another outcome, in few boxes. */
  public SymptomChange change() {
    Optional<Differences> differences = outcomes().map(Differences::new);
    List<ChangedRegion> regions = differences.map(Differences::regions).orElse(List.of());
    return new SymptomChange(
        after.symptom().id(),
        after.symptom().title(),
        regions,
        differences.map(Differences::more).orElse(false),
        differences.map(Differences::share).orElse(new Share(0, 0, true)),
        differences.map(Differences::builds).orElse(List.of()));
  }

  /** The outcomes of both sides; empty where neither offers the symptom on shared equipment. */
  Optional<OutcomePairs> outcomes() {
    List<Build> offered =
        joined.builds().stream()
            .filter(build -> offers(before, build) || offers(after, build))
            .toList();
    return offered.isEmpty()
        ? Optional.empty()
        : Optional.of(OutcomePairs.of(joined, offered, before, after));
  }

  private static boolean offers(SymptomScope scope, Build build) {
    return scope.side().own(build).satisfies(scope.symptom().applies());
  }
}
