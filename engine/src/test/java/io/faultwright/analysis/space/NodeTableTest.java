package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each node is stored once, however many there are. */
class NodeTableTest {
  private static final int MANY = 3_000;

  private final NodeTable table = new NodeTable();

  /** Three runs up to the cells 2, 5 and 9, on one of three axes. */
  private int intern(int number) {
    int child = number / 3;
    Runs runs = Runs.of(new int[] {child, child, 1, 1, 1, child + 2, child + 2, child + 2, 0});
    return table.intern(number % 3, runs);
  }

  @Test
  void theSameNodeIsTheSameNumber() {
    for (int i = 0; i < MANY; i++) {
      assertEquals(i + 2, intern(i));
    }
    assertEquals(MANY + 2, table.count());
    for (int i = MANY - 1; i >= 0; i--) {
      assertEquals(i + 2, intern(i));
    }
    assertEquals(MANY + 2, table.count());
  }

  @Test
  void aNodeKeepsItsAxisAndItsRuns() {
    for (int i = 6; i < MANY; i++) {
      intern(i);
    }
    for (int i = 6; i < MANY; i++) {
      int node = intern(i);
      assertEquals(i % 3, table.axis(node));
      assertEquals(4, table.runs(node));
      assertEquals(5, table.runEnd(node, 1));
      assertEquals(1, table.runChild(node, 1));
      int child = i / 3;
      int[] expected = {child, child, 1, 1, 1, child + 2, child + 2, child + 2, 0};
      for (int cell = 0; cell < expected.length; cell++) {
        assertEquals(expected[cell], table.child(node, cell));
      }
    }
  }

  @Test
  void nodesWithFewerRunsAreOthers() {
    int two = table.intern(0, Runs.of(new int[] {0, 1}));
    int three = table.intern(0, Runs.of(new int[] {0, 1, 0}));
    int other = table.intern(1, Runs.of(new int[] {0, 1}));
    assertEquals(3, Set.of(two, three, other).size());
    assertEquals(two, table.intern(0, Runs.of(new int[] {0, 1})));
  }
}
