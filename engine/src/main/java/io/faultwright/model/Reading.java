package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Something a technician can observe, or that follows from what was observed.
 *
 * @param id identifier
 * @param place where it stands
 * @param title short name, for tables
 * @param ask the question, for charts
 * @param domain which values it can have
 * @param access what has to be opened or touched
 * @param minutes how long it takes, without its set-up
 * @param how how it is taken, one instruction an entry
 * @param where where it is taken
 * @param phase phase of the cycle in which it is taken
 * @param instrument what it is taken with
 * @param accuracy of the instrument; absent: not known, the value counts as exact
 * @param cautions ids of the cautions to show before it, those of its access kind included
 * @param guide id of the page that explains it
 * @param applies equipment on which it can be taken
 * @param normal values that are no complaint; empty where that is not said
 * @param derived how it is computed; absent where it is observed
 * @param assumed the value it has in a case that does not give it; mostly absent
 * @param setUp id of what has to be done once before all readings that name it
 * @param after ids of the readings that are asked before this one
 */
public record Reading(
    String id,
    Place place,
    String title,
    String ask,
    Domain domain,
    Access access,
    BigFraction minutes,
    List<String> how,
    Optional<String> where,
    Optional<String> phase,
    Optional<String> instrument,
    Optional<Accuracy> accuracy,
    SortedSet<String> cautions,
    Optional<String> guide,
    Condition applies,
    SortedSet<String> normal,
    Optional<Derived> derived,
    Optional<Value> assumed,
    Optional<String> setUp,
    SortedSet<String> after) {
  public Reading {
    how = List.copyOf(how);
    cautions = Sorted.set(cautions);
    normal = Sorted.set(normal);
    after = Sorted.set(after);
  }

  /**
   * How far the true value may lie from the one shown, to either side: the instrument's accuracy
   * and, since a display rounds, half of the smallest step shown. Absent where the accuracy is not
   * known.
   */
  public Optional<BigFraction> tolerance(BigFraction shown) {
    BigFraction rounding =
        domain.match(
            measured -> measured.resolution().map(step -> step.divide(2)).orElse(BigFraction.ZERO),
            choice -> BigFraction.ZERO);
    return accuracy.map(known -> known.at(shown).add(rounding));
  }

  /** The same reading where it can have only some of its values. */
  public Reading within(Domain narrower) {
    return new Reading(
        id,
        place,
        title,
        ask,
        narrower,
        access,
        minutes,
        how,
        where,
        phase,
        instrument,
        accuracy,
        cautions,
        guide,
        applies,
        normal,
        derived,
        assumed,
        setUp,
        after);
  }

  /** Ids of the readings it is computed from; none where it is observed. */
  public SortedSet<String> operands() {
    return derived.map(Derived::operands).orElse(Sorted.set(Set.of()));
  }
}
