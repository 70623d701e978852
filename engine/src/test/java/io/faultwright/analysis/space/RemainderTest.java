package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.BitSet;
import org.junit.jupiter.api.Test;

/** What sets leave, where they fall into parts; counted by hand. */
class RemainderTest {
  /** Sixty-four combinations. */
  private final Diagrams diagrams = new Diagrams(new int[] {4, 16});

  private static BitSet cells(int from, int to) {
    BitSet cells = new BitSet();
    cells.set(from, to);
    return cells;
  }

  private int box(int row, int from, int to) {
    return diagrams.box(new BitSet[] {cells(row, row + 1), cells(from, to)});
  }

  /** In each of the four rows, the cells 0 to 11 one by one; a quarter is left. */
  private int[] rows() {
    int[] sets = new int[48];
    Arrays.setAll(sets, i -> box(i / 12, i % 12, i % 12 + 1));
    return sets;
  }

  private Parts parts(int situations, int[] sets) {
    Parts parts = Parts.of(diagrams, situations, sets);
    assertTrue(parts.all().size() > 1, "the sets fall into parts");
    return parts;
  }

  @Test
  void everyPartCounts() {
    int left = diagrams.literal(1, cells(12, 16));
    assertEquals(left, new Remainder(diagrams, parts(Diagrams.ALL, rows())).whole());
    int first = diagrams.literal(0, cells(0, 2));
    assertEquals(diagrams.and(left, first), new Remainder(diagrams, parts(first, rows())).whole());
  }

  @Test
  void onlyTheSetsThatAreTakenAway() {
    Remainder odd = new Remainder(diagrams, parts(Diagrams.ALL, rows()), set -> set / 12 % 2 == 1);
    int even = diagrams.or(diagrams.literal(0, cells(0, 1)), diagrams.literal(0, cells(2, 3)));
    int left = diagrams.literal(1, cells(12, 16));
    assertEquals(diagrams.or(even, left), odd.whole());
  }

  /**
   * Before anything is done all parts may stay; of each part at hand the sets take what they take.
   */
  @Test
  void boundsBeforeAndAfter() {
    Remainder remainder = new Remainder(diagrams, parts(Diagrams.ALL, rows()));
    assertEquals(1, remainder.atMost(), 1e-8);
    assertTrue(remainder.atLeast() >= 0 && remainder.atLeast() <= 0.25);
    assertEquals(Diagrams.NONE, remainder.known());
    remainder.whole();
    assertEquals(0.25, remainder.atMost(), 1e-8);
    assertEquals(0.25, remainder.atLeast(), 1e-8);
    int half = diagrams.literal(0, cells(1, 3));
    assertEquals(0.5, new Remainder(diagrams, parts(half, rows())).atMost(), 1e-8);
  }

  /** Two sets of an eighth and a quarter: what they take away is known before it is done. */
  @Test
  void whatSurelyStaysIsKnownBefore() {
    int[] two = {box(0, 0, 8), box(1, 0, 16)};
    Remainder remainder = new Remainder(diagrams, Parts.of(diagrams, Diagrams.ALL, two));
    assertEquals(0.625, remainder.atLeast(), 1e-8);
    int half = diagrams.literal(0, cells(0, 2));
    assertEquals(0.125, new Remainder(diagrams, Parts.of(diagrams, half, two)).atLeast(), 1e-8);
  }
}
