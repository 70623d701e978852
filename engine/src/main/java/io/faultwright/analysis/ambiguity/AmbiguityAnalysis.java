package io.faultwright.analysis.ambiguity;

import io.faultwright.ambiguity.Distinction;
import io.faultwright.ambiguity.Distinction.Overlap;
import io.faultwright.ambiguity.SymptomFaults;
import io.faultwright.ambiguity.Taking;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.analysis.space.Witness;
import io.faultwright.finding.Share;
import io.faultwright.model.Answer;
import io.faultwright.model.FaultPair;
import io.faultwright.model.Rule;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What tells the faults of a symptom apart, two by two, over all situations at once. Two faults are
 * compared on the machines that can have either, for everybody knows the machine he stands at.
 */
public final class AmbiguityAnalysis {
  private final SymptomSpace symptom;
  private final Space space;
  private final Diagrams diagrams;
  private final Takings takings;
  private final CheapestReadings cheapest;
  private final SingleReadings singles;
  private final SortedMap<String, Integer> faults = new TreeMap<>();

  public AmbiguityAnalysis(SymptomSpace symptom) {
    this.symptom = symptom;
    this.space = symptom.space();
    this.diagrams = space.diagrams();
    this.takings = new Takings(space);
    this.cheapest = new CheapestReadings(diagrams, takings);
    this.singles = new SingleReadings(space, takings);
    symptom
        .answers()
        .forEach(
            (answer, where) -> {
              if (answer instanceof Answer.OfFault && where != Diagrams.NONE) {
                faults.put(answer.name(), where);
              }
            });
  }

  /**
   * The faults that can be concluded, with what tells each two of them apart.
   *
   * @param wanted which pairs to look at
   */
  public SymptomFaults pairs(Predicate<FaultPair> wanted) {
    List<String> ids = List.copyOf(faults.keySet());
    List<Distinction> pairs = new ArrayList<>();
    for (int one = 0; one < ids.size(); one++) {
      for (int other = one + 1; other < ids.size(); other++) {
        FaultPair pair = FaultPair.of(ids.get(one), ids.get(other));
        if (wanted.test(pair)) {
          pairs.add(compared(pair));
        }
      }
    }
    return new SymptomFaults(symptom.symptom().id(), new TreeSet<>(faults.keySet()), pairs);
  }

  /** What tells two faults apart that can both be concluded. */
  private Distinction compared(FaultPair pair) {
    int machines = machines(faults.get(pair.one()), faults.get(pair.other()));
    int one = diagrams.and(faults.get(pair.one()), machines);
    int other = diagrams.and(faults.get(pair.other()), machines);
    int both = diagrams.and(one, other);
    Apart apart = new Apart(diagrams.minus(one, both), diagrams.minus(other, both));
    return new Distinction(
        pair,
        machines != Diagrams.NONE,
        both == Diagrams.NONE
            ? Optional.empty()
            : Optional.of(overlap(pair, both, diagrams.or(one, other))),
        apart.cheapest(),
        apart.needed(),
        apart.somewhere() ? singles.of(pair, apart.one, apart.other) : List.of(),
        Optional.empty());
  }

  /** All situations on machines on which both sets have some. */
  private int machines(int one, int other) {
    BitSet cells = diagrams.occurring(one)[0];
    cells.and(diagrams.occurring(other)[0]);
    return cells.isEmpty() ? Diagrams.NONE : diagrams.literal(0, cells);
  }

  private Overlap overlap(FaultPair pair, int both, int either) {
    SortedSet<String> rules =
        symptom.symptom().rules().values().stream()
            .filter(rule -> concludes(rule, pair))
            .map(Rule::id)
            .filter(rule -> diagrams.and(symptom.firing(rule), both) != Diagrams.NONE)
            .collect(Collectors.toCollection(TreeSet::new));
    double share = Ratios.of(count(both), count(either));
    return new Overlap(
        symptom.symptom().together().contains(pair),
        rules,
        new Share(share, share, true),
        new Witness(space).of(both),
        false);
  }

  private static boolean concludes(Rule rule, FaultPair pair) {
    return rule.conclusion().answers().stream()
        .filter(Answer.OfFault.class::isInstance)
        .anyMatch(fault -> fault.name().equals(pair.one()) || fault.name().equals(pair.other()));
  }

  private BigInteger count(int situations) {
    return space.distinguishable(situations);
  }

  /** The situations of two faults in which only one of them is concluded. */
  private final class Apart {
    private final int one;
    private final int other;

    Apart(int one, int other) {
      this.one = one;
      this.other = other;
    }

    boolean somewhere() {
      return one != Diagrams.NONE && other != Diagrams.NONE;
    }

    Optional<Taking> cheapest() {
      return somewhere() ? cheapest.between(one, other).map(takings::taking) : Optional.empty();
    }

    SortedSet<String> needed() {
      SortedSet<String> needed = takings.all();
      needed.removeIf(reading -> !somewhere() || !isNeeded(reading));
      return needed;
    }

    private boolean isNeeded(String reading) {
      SortedSet<String> others = takings.all();
      others.remove(reading);
      return cheapest.agree(one, other, takings.known(others));
    }
  }
}
