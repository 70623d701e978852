package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.BitSet;
import org.junit.jupiter.api.Test;

/** Sets joined, and what is known of them before. */
class UnionTest {
  private final Diagrams diagrams = new Diagrams(new int[] {4, 2});

  private int rows(int from, int to) {
    BitSet cells = new BitSet();
    cells.set(from, to);
    return diagrams.literal(0, cells);
  }

  @Test
  void boundsBeforeAndAfter() {
    Union union = new Union(diagrams, new int[] {rows(0, 1), rows(0, 2)});
    assertEquals(Diagrams.NONE, union.known());
    assertEquals(0, union.atLeast());
    assertEquals(0.75, union.atMost(), 1e-8);
    assertEquals(rows(0, 2), union.whole());
    assertEquals(rows(0, 2), union.known());
    assertEquals(0.5, union.atLeast(), 1e-8);
    assertEquals(0.5, union.atMost(), 1e-8);
  }

  @Test
  void neverMoreThanAll() {
    assertEquals(1, new Union(diagrams, new int[] {rows(0, 3), rows(1, 4)}).atMost());
  }

  @Test
  void ofNothing() {
    assertEquals(Diagrams.NONE, new Union(diagrams, new int[] {}).whole());
  }
}
