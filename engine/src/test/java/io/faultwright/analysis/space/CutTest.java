package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** The number line in pieces. */
class CutTest {
  private static final Interval RANGE = Interval.closed(number(0), number(9));

  private static BigFraction number(int value) {
    return BigFraction.of(value);
  }

  private static Interval interval(int low, boolean atLow, int high, boolean atHigh) {
    return new Interval(
        Optional.of(new End(number(low), atLow)), Optional.of(new End(number(high), atHigh)));
  }

  private static SortedSet<Cut> cuts(Cut... cuts) {
    return new TreeSet<>(List.of(cuts));
  }

  @Test
  void inOrderAndBeforeAValueFirst() {
    Cut before = new Cut(number(2), false);
    Cut behind = new Cut(number(2), true);
    Cut later = new Cut(number(3), false);
    assertEquals(
        List.of(before, behind, later), Stream.of(later, behind, before).sorted().toList());
    assertEquals(List.of(before, behind), Cut.around(number(2)));
  }

  @Test
  void theEndsOfAnInterval() {
    assertEquals(
        cuts(new Cut(number(2), true), new Cut(number(5), true)),
        Cut.of(interval(2, false, 5, true)));
    assertEquals(
        cuts(new Cut(number(2), false), new Cut(number(5), false)),
        Cut.of(interval(2, true, 5, false)));
    assertEquals(cuts(new Cut(number(2), true)), Cut.of(Interval.above(number(2))));
    assertEquals(cuts(new Cut(number(2), false)), Cut.of(Interval.below(number(2))));
    assertEquals(cuts(), Cut.of(new Interval(Optional.empty(), Optional.empty())));
  }

  @Test
  void piecesOfARange() {
    assertEquals(List.of(RANGE), Cut.pieces(RANGE, cuts()));
    assertEquals(
        List.of(
            interval(0, true, 2, true), interval(2, false, 5, false), interval(5, true, 9, true)),
        Cut.pieces(RANGE, cuts(new Cut(number(2), true), new Cut(number(5), false))));
    assertEquals(
        List.of(
            interval(0, true, 2, false), interval(2, true, 2, true), interval(2, false, 9, true)),
        Cut.pieces(RANGE, new TreeSet<>(Cut.around(number(2)))));
  }

  @Test
  void cutsAtTheEndsOfTheRange() {
    assertEquals(
        List.of(interval(0, true, 0, true), interval(0, false, 9, true)),
        Cut.pieces(RANGE, new TreeSet<>(Cut.around(number(0)))));
    assertEquals(
        List.of(interval(0, true, 9, false), interval(9, true, 9, true)),
        Cut.pieces(RANGE, new TreeSet<>(Cut.around(number(9)))));
    assertEquals(
        List.of(RANGE),
        Cut.pieces(RANGE, cuts(new Cut(number(-1), true), new Cut(number(10), false))));
  }
}
