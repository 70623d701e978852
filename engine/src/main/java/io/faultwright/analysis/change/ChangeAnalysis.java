package io.faultwright.analysis.change;

import io.faultwright.analysis.space.Box;
import io.faultwright.analysis.space.BoxWords;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Regions;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.analysis.space.Witness;
import io.faultwright.change.ChangedRegion;
import io.faultwright.change.Outcome;
import io.faultwright.change.SymptomChange;
import io.faultwright.finding.RegionTest;
import io.faultwright.finding.Share;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Never;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Finds every situation of a symptom whose outcome changed; none is a proof that none did. */
public final class ChangeAnalysis {
  private final Joined joined;
  private final String symptom;
  private final SymptomScope before;
  private final SymptomScope after;

  /**
   * For a symptom that both revisions have.
   *
   * @param symptom its id
   */
  public ChangeAnalysis(Joined joined, String symptom) {
    this.joined = joined;
    this.symptom = symptom;
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
    List<Build> offered =
        joined.builds().stream().filter(build -> offers(before, build) || offers(after, build)).toList();
    if (offered.isEmpty()) {
      return new SymptomChange(symptom, title(), List.of(), new Share(0, 0, true));
    }
    Space space = space(offered);
    return new Differences(space, outcomes(space, before), outcomes(space, after)).change();
  }

  private String title() {
    return after.symptom().title();
  }

  private static boolean offers(SymptomScope scope, Build build) {
    return scope.side().own(build).satisfies(scope.symptom().applies());
  }

  private Space space(List<Build> builds) {
    List<Condition> conditions = new ArrayList<>();
    List<Condition> others = new ArrayList<>();
    for (SymptomScope scope : List.of(before, after)) {
      Translation translation = new Translation(joined, scope.side());
      SymptomScope.conditions(scope.symptom()).stream()
          .map(translation::condition)
          .forEach(conditions::add);
      nevers(scope).forEach(never -> others.add(never.when()));
    }
    List<Condition> counted =
        conditions.stream()
            .flatMap(Condition::tests)
            .filter(test -> !SharedNames.isAid(test.subject()))
            .<Condition>map(test -> test)
            .toList();
    others.addAll(conditions);
    return Space.of(joined.knowledge(), builds, counted, others);
  }

  private List<Never> nevers(SymptomScope scope) {
    Translation translation = new Translation(joined, scope.side());
    List<Never> nevers = new ArrayList<>();
    scope.nevers().forEach(never -> nevers.add(translation.never(never)));
    scope.asked().forEach(reading -> translation.outOfRange(reading).ifPresent(nevers::add));
    return nevers;
  }

  private SortedMap<Outcome, Integer> outcomes(Space space, SymptomScope scope) {
    Translation translation = new Translation(joined, scope.side());
    int offered =
        space
            .truth(BuildConditions.of(scope.side().satisfying(scope.symptom().applies())))
            .isTrue();
    int real = space.diagrams().and(space.consistent(), offered);
    SymptomSpace rules =
        SymptomSpace.within(space, translation.symptom(scope.symptom()), nevers(scope), real);
    return OutcomeSets.of(
        space, offered, space.truth(translation.condition(scope.symptom().recognise())), rules);
  }

  /** Where two outcomes differ, in boxes of one kind of difference each. */
  private final class Differences {
    private final Space space;
    private final Diagrams diagrams;
    private final SortedMap<Outcome, Integer> old;
    private final SortedMap<Outcome, Integer> current;
    private final int belonging;
    private final BoxWords words;
    private int changed = Diagrams.NONE;

    Differences(
        Space space, SortedMap<Outcome, Integer> old, SortedMap<Outcome, Integer> current) {
      this.space = space;
      this.diagrams = space.diagrams();
      this.old = old;
      this.current = current;
      this.belonging = diagrams.or(belonging(old), belonging(current));
      this.words = new BoxWords(space, belonging);
    }

    /** Situations that belong to the symptom. */
    private int belonging(SortedMap<Outcome, Integer> outcomes) {
      return outcomes.entrySet().stream()
          .filter(outcome -> outcome.getKey().kind().belongs())
          .map(Map.Entry::getValue)
          .reduce(Diagrams.NONE, diagrams::or);
    }

    SymptomChange change() {
      List<ChangedRegion> regions = new ArrayList<>();
      old.forEach(
          (from, here) ->
              current.forEach((to, there) -> regions.addAll(regions(from, here, to, there))));
      regions.sort(Comparator.comparing(region -> -region.share().high()));
      return new SymptomChange(symptom, title(), regions, share(changed));
    }

    private List<ChangedRegion> regions(Outcome from, int here, Outcome to, int there) {
      int both = diagrams.and(belonging, diagrams.and(here, there));
      if (from.equals(to) || both == Diagrams.NONE) {
        return List.of();
      }
      changed = diagrams.or(changed, both);
      return new Regions(space)
          .cover(both, belonging).stream().map(box -> region(from, to, both, box)).toList();
    }

    private ChangedRegion region(Outcome from, Outcome to, int both, Box box) {
      int inside = diagrams.and(both, diagrams.box(box.cells().toArray(BitSet[]::new)));
      List<RegionTest> tests = words.tests(box);
      List<String> facts = joined.knowledge().equipment().attributes();
      return new ChangedRegion(
          from,
          to,
          tests.stream().filter(test -> facts.contains(test.reading())).toList(),
          tests.stream().filter(test -> !facts.contains(test.reading())).toList(),
          withoutAids(new Witness(space).of(inside)),
          share(inside),
          false);
    }

    private Situation withoutAids(Situation witness) {
      SortedMap<String, Value> readings = new TreeMap<>(witness.readings());
      readings.keySet().removeIf(SharedNames::isAid);
      return new Situation(witness.equipment(), readings);
    }

    private Share share(int part) {
      BigInteger all = space.distinguishable(belonging);
      BigInteger some = space.distinguishable(part);
      double figure = all.signum() == 0 ? 0 : ratio(some, all);
      return new Share(figure, figure, true);
    }
  }

  private static double ratio(BigInteger part, BigInteger all) {
    return new BigDecimal(part)
        .divide(new BigDecimal(all), MathContext.DECIMAL64)
        .round(new MathContext(9))
        .doubleValue();
  }
}
