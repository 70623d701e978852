package io.faultwright.ambiguity;

import io.faultwright.finding.Share;
import io.faultwright.model.FaultPair;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/**
 * What tells two faults of a symptom apart.
 *
 * @param faults the two
 * @param sameMachine whether some machine can have either; if not, its nameplate tells
 * @param overlap the situations in which both are concluded, where there are any
 * @param cheapest the easiest readings that always tell apart which of the two it is, where only
 *     one is concluded; absent where there are no such readings, or none are needed
 * @param needed readings without which no others always do
 * @param singles what each reading does on its own, the easiest first
 * @param elsewhere the easiest readings that always tell them apart in another symptom, where they
 *     are easier than here, or where this symptom has an overlap
 */
public record Distinction(
    FaultPair faults,
    boolean sameMachine,
    Optional<Overlap> overlap,
    Optional<Taking> cheapest,
    SortedSet<String> needed,
    List<Single> singles,
    Optional<Elsewhere> elsewhere) {
  public Distinction {
    needed = Sorted.set(needed);
    singles = List.copyOf(singles);
  }

  /**
   * Both faults in one situation.
   *
   * @param declared whether the symptom lists them as {@code together}; else it contradicts itself
   * @param rules ids of the rules that conclude them there
   * @param share of the situations with either fault in which it is both
   * @param witness one of the situations
   * @param replayed whether Drools concludes both there
   */
  public record Overlap(
      boolean declared, SortedSet<String> rules, Share share, Situation witness, boolean replayed) {
    public Overlap {
      rules = Sorted.set(rules);
    }

    Overlap confirmed() {
      return new Overlap(declared, rules, share, witness, true);
    }
  }

  /**
   * One reading on its own.
   *
   * @param reading id; what it is held against or computed from is taken with it
   * @param taking everything that is taken for it
   * @param always whether it always tells them apart
   * @param settles how likely it is that one of the two faults is left after it. The faults are as
   *     likely as their frequencies say, the distinguishable situations of a fault equally likely
   */
  public record Single(String reading, Taking taking, boolean always, double settles) {}

  /** Readings that tell two faults apart in another symptom. */
  public record Elsewhere(String symptom, Taking taking) {}

  /** Whether every complete set of readings leaves at most one of them. */
  public boolean always() {
    return overlap.isEmpty();
  }

  /** Whether one of them is never concluded without the other on a machine that can have both. */
  public boolean never() {
    return overlap.isPresent() && cheapest.isEmpty();
  }

  /** The same with its overlap confirmed by Drools. */
  public Distinction confirmed() {
    return new Distinction(
        faults, sameMachine, overlap.map(Overlap::confirmed), cheapest, needed, singles, elsewhere);
  }

  /** The same with what another symptom knows. */
  public Distinction with(Optional<Elsewhere> found) {
    return new Distinction(faults, sameMachine, overlap, cheapest, needed, singles, found);
  }
}
