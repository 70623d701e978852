package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What is asked together comes to stand together. */
class AxisOrderTest {
  /** How far the members of the groups stand apart, all in all. */
  private static int span(List<String> order, List<Set<String>> together) {
    return together.stream()
        .mapToInt(
            group ->
                group.stream().mapToInt(order::indexOf).max().orElseThrow()
                    - group.stream().mapToInt(order::indexOf).min().orElseThrow())
        .sum();
  }

  @Test
  void pairsBecomeNeighbours() {
    List<String> given = List.of("a", "b", "c", "d", "e", "f");
    List<Set<String>> pairs = List.of(Set.of("a", "f"), Set.of("b", "e"), Set.of("c", "d"));
    assertEquals(3, span(new AxisOrder(given, pairs).best(), pairs));
  }

  /** Neighbours along a line, given in a seeded disorder: eleven steps are the least there are. */
  @Test
  void aChainIsNearlyUnrolled() {
    List<String> line = new ArrayList<>();
    List<Set<String>> links = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      line.add("r" + (char) ('a' + i));
    }
    for (int i = 0; i + 1 < 12; i++) {
      links.add(Set.of(line.get(i), line.get(i + 1)));
    }
    for (int seed = 0; seed < 20; seed++) {
      List<String> mixed = new ArrayList<>(line);
      Collections.shuffle(mixed, new Random(seed));
      List<String> best = new AxisOrder(mixed, links).best();
      assertEquals(new TreeSet<>(line), new TreeSet<>(best));
      assertTrue(span(best, links) <= 22, best.toString());
      assertTrue(span(best, links) < span(mixed, links), best.toString());
    }
  }

  @Test
  void withoutGroupsTheGivenOrderStays() {
    List<String> given = List.of("c", "a", "b");
    assertEquals(given, new AxisOrder(given, List.of()).best());
  }

  @Test
  void theSameEveryTime() {
    List<String> given = List.of("a", "b", "c", "d", "e");
    List<Set<String>> groups = List.of(Set.of("a", "e"), Set.of("a", "c", "e"), Set.of("b", "d"));
    assertEquals(new AxisOrder(given, groups).best(), new AxisOrder(given, groups).best());
  }
}
