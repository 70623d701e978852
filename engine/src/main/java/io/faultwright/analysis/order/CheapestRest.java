package io.faultwright.analysis.order;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.sequence.Check;
import io.faultwright.sequence.Order;
import io.faultwright.sequence.Orders;
import io.faultwright.sequence.Outlay;
import io.faultwright.sequence.Patience;
import io.faultwright.sequence.Problem;
import io.faultwright.sequence.Step;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The cheapest orders of checks from wherever one has come to: what is paid is not paid again, what
 * was asked is waited for no more, and late checks come last among those that are left.
 */
final class CheapestRest {
  /** Sets of situations that are looked into for one place, and for all places together. */
  private static final long EFFORT = 4_000;

  private static final long ALL_EFFORT = 40_000;

  /** With more sets than this there is no order. */
  private static final long MOST = 4 * EFFORT;

  private final Diagrams diagrams;
  private final List<Integer> told;
  private final BitSet readings = new BitSet();
  private final SymptomSituations situations;
  private final List<Outlay> outlays;
  private final List<Check> checks;
  private final Map<Place, Rest> known = new HashMap<>();
  private long effort = ALL_EFFORT;

  /**
   * @param told what may be told, as situations: the results, and what is sent elsewhere first
   * @param checks one for each of the questions, which tell all results apart
   */
  CheapestRest(
      Diagrams diagrams,
      List<Integer> told,
      SymptomSituations situations,
      List<Outlay> outlays,
      List<Check> checks) {
    this.diagrams = diagrams;
    this.told = List.copyOf(told);
    this.readings.set(1, diagrams.axes());
    this.situations = situations;
    this.outlays = List.copyOf(outlays);
    this.checks = List.copyOf(checks);
  }

  /**
   * Where one has come to.
   *
   * @param shown for each thing that may be told, the readings that mean it; machines on which they
   *     are the same cost the same
   */
  private record Place(List<Integer> shown, BitSet paid, BitSet asked) {}

  /**
   * What is left to do; costs are times likelihood.
   *
   * @param first position of the question that is asked first; absent where nothing is
   * @param asked positions of all questions that are asked anywhere
   */
  record Rest(double minutes, double weighted, double atLeast, OptionalInt first, BitSet asked) {}

  /**
   * The cheapest order for a set on one machine, as the rules tell machines apart.
   *
   * @throws io.faultwright.sequence.TooManySets where no order is found
   */
  Rest of(int set, Way way) {
    Place place = new Place(shown(set), way.paid(), way.asked());
    Rest rest = known.get(place);
    if (rest == null) {
      rest = rest(set, way);
      known.put(place, rest);
    }
    return rest;
  }

  private List<Integer> shown(int set) {
    return told.stream()
        .map(situations -> diagrams.keep(diagrams.and(set, situations), readings))
        .toList();
  }

  private Rest rest(int set, Way way) {
    Patience patience = Patience.of(Math.min(EFFORT, Math.max(0, effort))).atMost(MOST);
    Order order = Orders.cheapest(problem(set, way), patience);
    effort -= order.effort();
    double likelihood = likelihood(set);
    OptionalInt first =
        order.first() instanceof Step.Ask ask ? OptionalInt.of(ask.check()) : OptionalInt.empty();
    return new Rest(
        order.minutes() * likelihood,
        order.weighted() * likelihood,
        order.atLeast() * likelihood,
        first,
        asked(order.first()));
  }

  /** How likely a set is, relative to others. */
  double likelihood(int set) {
    return situations.likelihood(set);
  }

  private Problem problem(int set, Way way) {
    List<Outlay> left = new ArrayList<>();
    for (int i = 0; i < outlays.size(); i++) {
      left.add(way.paid().get(i) ? new Outlay(0, 0) : outlays.get(i));
    }
    return new Problem(situations.within(set), left, waiting(way.asked()));
  }

  private List<Check> waiting(BitSet asked) {
    return checks.stream()
        .map(
            check -> {
              BitSet after = (BitSet) check.after().clone();
              after.andNot(asked);
              return new Check(check.outlays(), after, check.late());
            })
        .toList();
  }

  private static BitSet asked(Step from) {
    BitSet asked = new BitSet();
    collect(from, asked, Collections.newSetFromMap(new IdentityHashMap<>()));
    return asked;
  }

  private static void collect(Step step, BitSet asked, Set<Step> seen) {
    if (step instanceof Step.Ask ask && seen.add(step)) {
      asked.set(ask.check());
      ask.next().forEach(next -> collect(next, asked, seen));
    }
  }
}
