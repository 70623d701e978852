package io.faultwright.analysis.suggestion;

import io.faultwright.analysis.coverage.AimSpace;
import io.faultwright.analysis.coverage.Effect;
import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.suggestion.FewestOutcomes.Pair;
import io.faultwright.analysis.suggestion.FewestOutcomes.Wanted;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Truth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Which outcomes of a rule's tests would show those tests decide that no case does yet. */
final class DecidingOutcomes {
  /** Outcomes looked at for one test and side; more make no smaller set. */
  private static final int MOST = 64;

  private final AimSpace space;
  private final List<Test> tests;
  private final List<Sighting> cases;

  /**
   * @param cases those of the symptom
   */
  DecidingOutcomes(AimSpace space, List<Test> tests, Collection<Sighting> cases) {
    this.space = space;
    this.tests = tests;
    this.cases = List.copyOf(cases);
  }

  /** The fewest new outcomes that show all of these effects. */
  Set<Outcomes> fewest(List<Effect> open) {
    return FewestOutcomes.of(open.stream().map(this::wanted).toList());
  }

  private Wanted wanted(Effect effect) {
    int test = tests.indexOf(effect.test());
    Set<Outcomes> met = possible(effect, true);
    Set<Outcomes> missed = possible(effect, false);
    List<Outcomes> seenMet = seen(effect, true);
    List<Outcomes> seenMissed = seen(effect, false);
    List<Pair> pairs = new ArrayList<>();
    for (Outcomes one : met) {
      add(seenMissed.stream().filter(other -> fits(effect, test, one, other)), List.of(one), pairs);
      missed.stream()
          .filter(other -> fits(effect, test, one, other))
          .forEach(other -> pairs.add(new Pair(List.of(one, other))));
    }
    for (Outcomes other : missed) {
      add(seenMet.stream().filter(one -> fits(effect, test, one, other)), List.of(other), pairs);
    }
    return new Wanted(pairs);
  }

  private static void add(Stream<Outcomes> seen, List<Outcomes> fresh, List<Pair> pairs) {
    if (seen.findAny().isPresent()) {
      pairs.add(new Pair(fresh));
    }
  }

  private static boolean fits(Effect effect, int test, Outcomes one, Outcomes other) {
    return !effect.isUnique() || one.differsAtMostIn(test, other);
  }

  private List<Outcomes> seen(Effect effect, boolean value) {
    return cases.stream()
        .filter(one -> effect.isShownBy(one, value))
        .map(this::outcomes)
        .distinct()
        .toList();
  }

  private Outcomes outcomes(Sighting one) {
    long known = 0;
    long met = 0;
    for (int test = 0; test < tests.size(); test++) {
      Truth truth = one.observed().met(tests.get(test));
      known |= truth == Truth.UNKNOWN ? 0 : 1L << test;
      met |= truth == Truth.TRUE ? 1L << test : 0;
    }
    return new Outcomes(known, met);
  }

  private Set<Outcomes> possible(Effect effect, boolean value) {
    Set<Outcomes> found = new LinkedHashSet<>();
    split(effect.where(value), 0, 0, found);
    return found;
  }

  private void split(int where, int from, long met, Set<Outcomes> found) {
    if (where == Diagrams.NONE || found.size() >= MOST) {
      return;
    }
    if (from == tests.size()) {
      found.add(Outcomes.all(tests.size(), met));
      return;
    }
    Diagrams diagrams = space.diagrams();
    Test test = tests.get(from);
    split(diagrams.and(where, space.whereTrue(test)), from + 1, met | 1L << from, found);
    split(diagrams.and(where, space.whereFalse(test)), from + 1, met, found);
  }
}
