package io.faultwright.analysis.space;

import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * An order in which subjects that are asked about together stand close to each other; diagrams are
 * small then.
 *
 * <p>After Aloul, Markov, Sakallah, "FORCE: A Fast and Easy-To-Implement Variable-Ordering
 * Heuristic", Great Lakes Symposium on VLSI 2003: each group pulls its members to its centre, from
 * several starts, and the order with the shortest total span wins.
 */
final class AxisOrder {
  private static final int STARTS = 12;
  private static final int STEPS = 24;
  private static final long SEED = 20030428;

  private final List<String> given;
  private final int[][] together;

  /**
   * @param given the subjects in an order that is kept where none is better
   * @param together groups of subjects asked about together, such as those of one rule
   */
  AxisOrder(List<String> given, Collection<Set<String>> together) {
    this.given = List.copyOf(given);
    this.together =
        together.stream()
            .map(group -> group.stream().mapToInt(given::indexOf).toArray())
            .toArray(int[][]::new);
  }

  /** The subjects in the best order found. */
  List<String> best() {
    Random random = new Random(SEED);
    List<Integer> start = IntStream.range(0, given.size()).boxed().collect(Collectors.toList());
    int[] best = places(start);
    for (int i = 0; i < STARTS; i++) {
      int[] places = places(start);
      for (int step = 0; step < STEPS; step++) {
        places = pulled(places);
        best = span(places) < span(best) ? places : best;
      }
      Collections.shuffle(start, random);
    }
    int[] chosen = best;
    return IntStream.range(0, given.size())
        .boxed()
        .sorted(Comparator.comparing(subject -> chosen[subject]))
        .map(given::get)
        .toList();
  }

  /** For every subject its place in an order. */
  private static int[] places(List<Integer> order) {
    int[] places = new int[order.size()];
    for (int place = 0; place < places.length; place++) {
      places[order.get(place)] = place;
    }
    return places;
  }

  /** Every subject moves to the middle of the centres of its groups. */
  private int[] pulled(int[] places) {
    double[] pull = new double[places.length];
    int[] groups = new int[places.length];
    for (int[] group : together) {
      double centre = centre(group, places);
      for (int subject : group) {
        pull[subject] += centre;
        groups[subject]++;
      }
    }
    Comparator<Integer> byPull =
        Comparator.comparing(
            subject ->
                groups[subject] > 0 ? pull[subject] / groups[subject] : (double) places[subject]);
    return places(
        IntStream.range(0, places.length)
            .boxed()
            .sorted(byPull.thenComparing(Comparator.naturalOrder()))
            .toList());
  }

  private static double centre(int[] group, int[] places) {
    double sum = 0;
    for (int subject : group) {
      sum += places[subject];
    }
    return sum / group.length;
  }

  /** How far all groups reach, added up. */
  private long span(int[] places) {
    long span = 0;
    for (int[] group : together) {
      int first = Integer.MAX_VALUE;
      int last = 0;
      for (int subject : group) {
        first = Math.min(first, places[subject]);
        last = Math.max(last, places[subject]);
      }
      span += last - first;
    }
    return span;
  }
}
