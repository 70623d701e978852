package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Random;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** Many sets looked at part by part give what they give joined at once. */
class PartsTest {
  private final Random random = new Random(5);

  /** Boxes that test some axes each, for a stretch or for scattered cells. */
  private int[] sets(Diagrams diagrams, int count, int tested) {
    int[] sets = new int[count];
    for (int i = 0; i < count; i++) {
      int set = Diagrams.ALL;
      for (int test = 0; test < tested; test++) {
        int axis = random.nextInt(diagrams.axes());
        set = diagrams.and(set, diagrams.literal(axis, cells(diagrams.size(axis))));
      }
      sets[i] = set;
    }
    return Arrays.stream(sets).filter(set -> set != Diagrams.NONE).toArray();
  }

  private BitSet cells(int size) {
    BitSet cells = new BitSet();
    if (random.nextBoolean()) {
      int from = random.nextInt(size);
      cells.set(from, from + 1 + random.nextInt(size - from));
    } else {
      cells.set(random.nextInt(size));
      cells.set(random.nextInt(size));
    }
    return cells;
  }

  private static int joined(Diagrams diagrams, int[] sets) {
    return Arrays.stream(sets).reduce(Diagrams.NONE, diagrams::or);
  }

  @Test
  void partsLieApartAndHoldEverythingWithItsSets() {
    for (int round = 0; round < 60; round++) {
      Diagrams diagrams = new Diagrams(new int[] {3, 20, 4, 40, 2});
      int[] sets = sets(diagrams, 5 + round, 1 + random.nextInt(4));
      int situations = diagrams.not(joined(diagrams, sets(diagrams, 3, 2)));
      Parts parts = Parts.of(diagrams, situations, sets);
      int seen = Diagrams.NONE;
      for (Parts.Part part : parts.all()) {
        assertEquals(Diagrams.NONE, diagrams.and(seen, part.situations()));
        seen = diagrams.or(seen, part.situations());
        for (int set = 0; set < sets.length; set++) {
          boolean listed = Arrays.binarySearch(part.sets(), set) >= 0;
          int there = diagrams.and(part.situations(), sets[set]);
          assertTrue(listed || there == Diagrams.NONE, "a set is missing in a part");
        }
      }
      assertEquals(situations, seen);
    }
  }

  @Test
  void partsOfAPartitionAreSmall() {
    Diagrams diagrams = new Diagrams(new int[] {64, 64, 64});
    int[] sets = new int[512];
    for (int i = 0; i < sets.length; i++) {
      BitSet[] box = new BitSet[3];
      for (int axis = 0; axis < 3; axis++) {
        box[axis] = new BitSet();
        int from = (i >> 3 * axis & 7) * 8;
        box[axis].set(from, from + 8);
      }
      sets[i] = diagrams.box(box);
    }
    Parts parts = Parts.of(diagrams, Diagrams.ALL, sets);
    assertTrue(parts.all().stream().allMatch(part -> part.sets().length <= 8));
    int listed = parts.all().stream().mapToInt(part -> part.sets().length).sum();
    assertEquals(sets.length, listed, "no set is looked at twice");
    assertEquals(Diagrams.NONE, new Remainder(diagrams, parts).whole());
    assertTrue(new Meetings(diagrams, parts).pairs().isEmpty());
  }

  @Test
  void theRemainderIsWhatTheJoinedSetsLeave() {
    for (int round = 0; round < 60; round++) {
      Diagrams diagrams = new Diagrams(new int[] {3, 20, 4, 40, 2});
      int[] sets = sets(diagrams, 5 + round, 1 + random.nextInt(4));
      int situations = diagrams.not(joined(diagrams, sets(diagrams, 3, 2)));
      Remainder remainder = new Remainder(diagrams, Parts.of(diagrams, situations, sets));
      double low = remainder.atLeast();
      double high = remainder.atMost();
      int expected = diagrams.minus(situations, joined(diagrams, sets));
      double exact = part(diagrams, expected);
      assertTrue(low <= exact && exact <= high, () -> low + " " + exact + " " + high);
      assertEquals(expected, remainder.whole());
      assertEquals(expected, remainder.known());
      assertEquals(exact, remainder.atLeast(), 2e-9 * exact);
      assertEquals(exact, remainder.atMost(), 2e-9 * exact);
      Union union = new Union(diagrams, sets);
      assertEquals(joined(diagrams, sets), union.whole());
    }
  }

  @Test
  void everyPairThatMeetsIsFoundOnce() {
    for (int round = 0; round < 40; round++) {
      Diagrams diagrams = new Diagrams(new int[] {3, 20, 4, 40, 2});
      int[] sets = sets(diagrams, 5 + round, 3 + random.nextInt(3));
      SortedSet<Meetings.Pair> expected = new TreeSet<>();
      for (int i = 0; i < sets.length; i++) {
        for (int j = i + 1; j < sets.length; j++) {
          if (diagrams.and(sets[i], sets[j]) != Diagrams.NONE) {
            expected.add(new Meetings.Pair(i, j));
          }
        }
      }
      Parts parts = Parts.of(diagrams, Diagrams.ALL, sets);
      assertEquals(expected, new Meetings(diagrams, parts).pairs());
    }
  }

  /** However far it comes: what is said holds. */
  @Test
  void boundsHoldWhenTheTimeIsOver() {
    int[] sizes = new int[16];
    Arrays.fill(sizes, 12);
    Diagrams patient = new Diagrams(sizes);
    int[] all = sets(patient, 40, 3);
    double exact = part(patient, patient.not(joined(patient, all)));
    int stopped = 0;
    for (int looks = 2; looks < 40; looks += 3) {
      AtomicLong clock = new AtomicLong();
      Diagrams hurried = new Diagrams(sizes, new Deadline(looks, clock::incrementAndGet));
      int[] sets = copied(patient, hurried, all);
      Remainder remainder = new Remainder(hurried, Parts.of(hurried, Diagrams.ALL, sets));
      Union union = new Union(hurried, sets);
      stopped += stops(remainder) + stops(union);
      assertTrue(remainder.atLeast() <= exact && exact <= remainder.atMost());
      assertTrue(union.atLeast() <= 1 - exact && 1 - exact <= union.atMost());
    }
    assertTrue(stopped > 12, "the table is meant to take many looks at the clock: " + stopped);
  }

  /** The exact part of all cell combinations, as near as a double comes. */
  private static double part(Diagrams diagrams, int diagram) {
    BigDecimal all = new BigDecimal(diagrams.count(Diagrams.ALL));
    return new BigDecimal(diagrams.count(diagram)).divide(all, MathContext.DECIMAL64).doubleValue();
  }

  private static int stops(Bounded set) {
    try {
      set.whole();
      return 0;
    } catch (OutOfTime over) {
      return 1;
    }
  }

  private static int[] copied(Diagrams from, Diagrams to, int[] sets) {
    return Arrays.stream(sets).map(set -> to.box(from.occurring(set))).toArray();
  }

  @Test
  void nothingIsDoneAfterTheDeadline() {
    Diagrams late = new Diagrams(new int[] {2, 2}, Deadline.in(Duration.ofNanos(-1)));
    assertThrows(OutOfTime.class, () -> Parts.of(late, Diagrams.ALL, new int[] {}));
    assertFalse(Deadline.NEVER.nanosLeft() < 0);
  }
}
