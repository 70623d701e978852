package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Equal neighbours are one run. */
class RunsTest {
  private static void are(List<Integer> pairs, Runs runs) {
    assertEquals(pairs, Arrays.stream(runs.pairs(), 0, runs.length()).boxed().toList());
  }

  private static BitSet cells(int... cells) {
    BitSet set = new BitSet();
    Arrays.stream(cells).forEach(set::set);
    return set;
  }

  @Test
  void neighboursWithOneChildAreJoined() {
    are(List.of(5, 2, 7, 4, 5, 5), Runs.of(new int[] {5, 5, 7, 7, 5}));
    are(List.of(3, 1, 2, 2, 1, 3), Runs.of(new int[] {3, 2, 1}));
    assertFalse(Runs.of(new int[] {3, 2}).single());
    assertTrue(Runs.of(new int[] {3, 3, 3}).single());
  }

  @Test
  void cellsInsideAndOutside() {
    are(List.of(0, 1, 9, 3, 0, 5), Runs.of(cells(1, 2), 5, 9, 0));
    are(List.of(9, 1, 0, 3, 9, 4), Runs.of(cells(0, 3), 4, 9, 0));
    are(List.of(0, 5), Runs.of(cells(), 5, 9, 0));
    are(List.of(9, 5), Runs.of(cells(0, 1, 2, 3, 4), 5, 9, 0));
    are(List.of(0, 3, 9, 5), Runs.of(cells(3, 4, 5, 6), 5, 9, 0));
    are(List.of(0, 5), Runs.of(cells(7), 5, 9, 0));
  }

  @Test
  void moreRunsThanExpectedFitToo() {
    Runs runs = new Runs(0);
    for (int i = 0; i < 20; i++) {
      runs.add(i % 2, i + 1);
    }
    assertEquals(40, runs.length());
    are(List.of(0, 1, 1, 2), Runs.of(new int[] {0, 1}));
    assertEquals(20, runs.pairs()[39]);
    assertEquals(1, runs.pairs()[38]);
  }
}
