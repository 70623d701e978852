package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Diagrams against sets of cell combinations that are simply listed. */
class DiagramsTest {
  private static final int[] SIZES = {3, 5, 2, 4};
  private static final int ALL = 3 * 5 * 2 * 4;

  private final Diagrams diagrams = new Diagrams(SIZES);
  private final Random random = new Random(11);

  /** A diagram with the combinations it should hold, numbered with the last axis fastest. */
  private record Both(int diagram, BitSet listed) {}

  private static int[] cells(int number) {
    int[] cells = new int[SIZES.length];
    for (int axis = SIZES.length - 1, rest = number; axis >= 0; axis--) {
      cells[axis] = rest % SIZES[axis];
      rest /= SIZES[axis];
    }
    return cells;
  }

  private BitSet listed(int diagram) {
    BitSet listed = new BitSet();
    for (int number = 0; number < ALL; number++) {
      int rest = diagram;
      for (int axis = 0; axis < SIZES.length; axis++) {
        rest = diagrams.child(rest, axis, cells(number)[axis]);
      }
      listed.set(number, rest == Diagrams.ALL);
    }
    return listed;
  }

  private BitSet[] randomBox() {
    BitSet[] box = new BitSet[SIZES.length];
    for (int axis = 0; axis < SIZES.length; axis++) {
      box[axis] = new BitSet();
      box[axis].set(random.nextInt(SIZES[axis]));
      for (int cell = 0; cell < SIZES[axis]; cell++) {
        box[axis].set(cell, box[axis].get(cell) || random.nextBoolean());
      }
    }
    return box;
  }

  private static boolean inside(int number, BitSet[] box) {
    int[] cells = cells(number);
    return IntStream.range(0, cells.length).allMatch(axis -> box[axis].get(cells[axis]));
  }

  private static BitSet listed(BitSet[] box) {
    return IntStream.range(0, ALL)
        .filter(number -> inside(number, box))
        .collect(BitSet::new, BitSet::set, BitSet::or);
  }

  /** A random set, built from boxes by every operation. */
  private Both randomSet() {
    int diagram = Diagrams.NONE;
    BitSet wanted = new BitSet();
    for (int i = random.nextInt(6); i >= 0; i--) {
      BitSet[] box = randomBox();
      int other = diagrams.box(box);
      if (random.nextInt(3) == 0) {
        diagram = diagrams.minus(diagram, other);
        wanted.andNot(listed(box));
      } else {
        diagram = diagrams.or(diagram, other);
        wanted.or(listed(box));
      }
    }
    return new Both(diagram, wanted);
  }

  private static BitSet joined(
      BitSet a, BitSet b, java.util.function.BiConsumer<BitSet, BitSet> op) {
    BitSet result = (BitSet) a.clone();
    op.accept(result, b);
    return result;
  }

  @Test
  void setAlgebra() {
    for (int i = 0; i < 300; i++) {
      Both a = randomSet();
      Both b = randomSet();
      assertEquals(a.listed, listed(a.diagram));
      assertEquals(
          joined(a.listed, b.listed, BitSet::and), listed(diagrams.and(a.diagram, b.diagram)));
      assertEquals(
          joined(a.listed, b.listed, BitSet::or), listed(diagrams.or(a.diagram, b.diagram)));
      assertEquals(
          joined(a.listed, b.listed, BitSet::andNot), listed(diagrams.minus(a.diagram, b.diagram)));
      assertEquals(
          joined(a.listed, b.listed, BitSet::andNot).isEmpty(),
          diagrams.within(a.diagram, b.diagram));
    }
  }

  @Test
  void equalSetsAreTheSameNumber() {
    for (int i = 0; i < 300; i++) {
      Both a = randomSet();
      Both b = randomSet();
      assertEquals(a.listed.equals(b.listed), a.diagram == b.diagram);
      assertEquals(a.diagram, diagrams.not(diagrams.not(a.diagram)));
      int meet = diagrams.and(a.diagram, b.diagram);
      assertEquals(a.diagram, diagrams.or(meet, diagrams.minus(a.diagram, b.diagram)));
    }
  }

  @Test
  void whatSomeAxesLeaveOpen() {
    for (int i = 0; i < 300; i++) {
      Both a = randomSet();
      BitSet kept = new BitSet();
      IntStream.range(0, SIZES.length).forEach(axis -> kept.set(axis, random.nextBoolean()));
      BitSet wanted =
          IntStream.range(0, ALL)
              .filter(number -> a.listed.stream().anyMatch(one -> agree(one, number, kept)))
              .collect(BitSet::new, BitSet::set, BitSet::or);
      assertEquals(wanted, listed(diagrams.keep(a.diagram, kept)));
    }
  }

  private static boolean agree(int one, int other, BitSet axes) {
    return axes.stream().allMatch(axis -> cells(one)[axis] == cells(other)[axis]);
  }

  @Test
  void counts() {
    for (int i = 0; i < 300; i++) {
      Both a = randomSet();
      BitSet[] box = randomBox();
      BitSet within = joined(a.listed, listed(box), BitSet::and);
      assertEquals(BigInteger.valueOf(a.listed.cardinality()), diagrams.count(a.diagram));
      double part = (double) within.cardinality() / ALL;
      Fractions fractions = new Fractions(diagrams, a.diagram);
      assertTrue(fractions.atLeast(box) <= part && part <= fractions.atMost(box));
      assertEquals(fractions.atLeast(box), fractions.atMost(box), 3e-9);
      assertEquals(!within.isEmpty(), diagrams.meets(a.diagram, box));
    }
  }

  @Test
  void occurringCells() {
    for (int i = 0; i < 300; i++) {
      Both a = randomSet();
      BitSet[] expected = new BitSet[SIZES.length];
      Arrays.setAll(expected, axis -> new BitSet());
      a.listed.stream()
          .forEach(
              number -> {
                int[] cells = cells(number);
                IntStream.range(0, cells.length).forEach(axis -> expected[axis].set(cells[axis]));
              });
      assertArrayEquals(expected, diagrams.occurring(a.diagram));
    }
  }

  @Test
  void reachedCells() {
    for (int i = 0; i < 300; i++) {
      Both a = randomSet();
      BitSet[] box = randomBox();
      int axis = random.nextInt(SIZES.length);
      BitSet[] open = box.clone();
      open[axis] = new BitSet();
      open[axis].set(0, SIZES[axis]);
      BitSet expected = new BitSet();
      joined(a.listed, listed(open), BitSet::and).stream()
          .forEach(number -> expected.set(cells(number)[axis]));
      assertEquals(expected, diagrams.reached(a.diagram, box, axis));
    }
  }
}
