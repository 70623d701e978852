package io.faultwright.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class CyclesTest {
  private final SortedMap<String, List<String>> graph = new TreeMap<>();

  private void arrow(String from, String... to) {
    graph.put(from, List.of(to));
  }

  @Test
  void noCircle() {
    arrow("a", "b", "c");
    arrow("b", "c");
    arrow("c", "unknown");
    assertEquals(List.of(), Cycles.of(graph));
  }

  @Test
  void toItself() {
    arrow("a", "a");
    assertEquals(List.of(List.of("a", "a")), Cycles.of(graph));
  }

  @Test
  void beginsAtTheSmallestId() {
    arrow("x", "c");
    arrow("c", "b");
    arrow("b", "a", "z");
    arrow("a", "c");
    assertEquals(List.of(List.of("a", "c", "b", "a")), Cycles.of(graph));
  }

  @Test
  void separateCircles() {
    arrow("a", "b");
    arrow("b", "a", "c");
    arrow("c", "d");
    arrow("d", "c");
    assertEquals(List.of(List.of("a", "b", "a"), List.of("c", "d", "c")), Cycles.of(graph));
  }

  @Test
  void longChainsAreNoTrouble() {
    for (int i = 0; i < 50_000; i++) {
      arrow("r" + i, "r" + (i + 1));
    }
    assertEquals(
        List.of(), assertTimeoutPreemptively(Duration.ofSeconds(20), () -> Cycles.of(graph)));
  }

  /** A circle is found exactly where the transitive closure has an id that reaches itself. */
  @Test
  void agreesWithReachability() {
    for (int seed = 0; seed < 500; seed++) {
      Random random = new Random(seed);
      boolean[][] reach = randomGraph(random);
      boolean circular = reachesItself(reach);
      List<List<String>> cycles = Cycles.of(graph);
      assertEquals(circular, !cycles.isEmpty(), "seed " + seed);
      cycles.forEach(this::assertIsCycle);
    }
  }

  private boolean[][] randomGraph(Random random) {
    graph.clear();
    int size = 2 + random.nextInt(7);
    boolean[][] edges = new boolean[size][size];
    for (int i = 0; i < size; i++) {
      TreeSet<String> next = new TreeSet<>();
      for (int j = 0; j < size; j++) {
        edges[i][j] = random.nextInt(size) == 0;
        if (edges[i][j]) {
          next.add("n" + j);
        }
      }
      graph.put("n" + i, List.copyOf(next));
    }
    return edges;
  }

  private static boolean reachesItself(boolean[][] reach) {
    int size = reach.length;
    for (int k = 0; k < size; k++) {
      for (int i = 0; i < size; i++) {
        for (int j = 0; j < size; j++) {
          reach[i][j] |= reach[i][k] && reach[k][j];
        }
      }
    }
    for (int i = 0; i < size; i++) {
      if (reach[i][i]) {
        return true;
      }
    }
    return false;
  }

  private void assertIsCycle(List<String> cycle) {
    assertEquals(cycle.get(0), cycle.get(cycle.size() - 1));
    for (int i = 1; i < cycle.size(); i++) {
      assertEquals(true, graph.get(cycle.get(i - 1)).contains(cycle.get(i)), cycle.toString());
    }
  }
}
