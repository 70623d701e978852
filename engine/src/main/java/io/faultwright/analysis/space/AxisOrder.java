package io.faultwright.analysis.space;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

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

  private final Collection<Set<String>> together;

  /**
   * @param together groups of subjects asked about together, such as those of one rule
   */
  AxisOrder(Collection<Set<String>> together) {
    this.together = together;
  }

  /** The subjects in the better order; the given one where none is found. */
  List<String> of(List<String> given) {
    Random random = new Random(SEED);
    List<String> start = given;
    List<String> best = given;
    for (int i = 0; i < STARTS; i++) {
      List<String> order = start;
      for (int step = 0; step < STEPS; step++) {
        order = pulled(order);
        best = span(order) < span(best) ? order : best;
      }
      start = new ArrayList<>(given);
      Collections.shuffle(start, random);
    }
    return best;
  }

  /** Every subject moves to the middle of the centres of its groups. */
  private List<String> pulled(List<String> order) {
    Map<String, Integer> at = positions(order);
    Map<String, Double> pull = new HashMap<>();
    Map<String, Integer> groups = new HashMap<>();
    for (Set<String> group : together) {
      double centre = group.stream().mapToInt(at::get).average().orElse(0);
      group.forEach(subject -> pull.merge(subject, centre, Double::sum));
      group.forEach(subject -> groups.merge(subject, 1, Integer::sum));
    }
    Comparator<String> byPull =
        Comparator.comparing(
            subject ->
                groups.containsKey(subject)
                    ? pull.get(subject) / groups.get(subject)
                    : at.get(subject));
    return order.stream().sorted(byPull.thenComparing(Comparator.naturalOrder())).toList();
  }

  /** How far all groups reach, added up. */
  private long span(List<String> order) {
    Map<String, Integer> at = positions(order);
    return together.stream()
        .mapToLong(
            group ->
                group.stream().mapToInt(at::get).max().orElse(0)
                    - group.stream().mapToInt(at::get).min().orElse(0))
        .sum();
  }

  private static Map<String, Integer> positions(List<String> order) {
    return order.stream().collect(Collectors.toMap(subject -> subject, order::indexOf));
  }
}
