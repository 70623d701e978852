package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Polyline;
import io.faultwright.quantity.Polyline.Knot;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Strips along chords of curves; heights over the chord worked out by hand. */
class StripTest {
  /** The square at whole numbers, straight between them, from 0 to 10. */
  private static final Polyline SQUARE =
      Polyline.through(
          IntStream.rangeClosed(0, 10)
              .mapToObj(i -> new Knot(half(2 * i), half(2 * i * i)))
              .toList());

  /** Falls steeply, then less so, then steeply again. */
  private static final Polyline STAIR =
      Polyline.through(
          List.of(
              new Knot(half(0), half(20)),
              new Knot(half(4), half(8)),
              new Knot(half(12), half(6)),
              new Knot(half(16), half(0))));

  private static BigFraction half(int halves) {
    return BigFraction.of(halves, 2);
  }

  private static Strip around(Polyline curve, int fromHalves, int toHalves) {
    return Strip.around(curve, Interval.closed(half(fromHalves), half(toHalves)));
  }

  private static Strip strip(int slope, BigFraction low, BigFraction high) {
    return new Strip(BigFraction.of(slope), Interval.closed(low, high));
  }

  /** Over the line of slope 10 the square is 0 at both ends and -25 in the middle. */
  @Test
  void theWholeCurve() {
    assertEquals(strip(10, half(-50), half(0)), around(SQUARE, 0, 20));
  }

  /** From 3 to 5 the chord is 8x - 15; the point at 4 lies at -16. */
  @Test
  void aPartBetweenPoints() {
    assertEquals(strip(8, half(-32), half(-30)), around(SQUARE, 6, 10));
  }

  /** From 3.5, 12.5 to 5.5, 30.5 the chord is 9x - 19; at 4 and at 5 the curve lies at -20. */
  @Test
  void aPartThatEndsWithinPieces() {
    assertEquals(strip(9, half(-40), half(-38)), around(SQUARE, 7, 11));
  }

  @Test
  void onOnePieceTheStripIsALine() {
    assertEquals(strip(7, half(-24), half(-24)), around(SQUARE, 6, 8));
    assertEquals(strip(19, half(-180), half(-180)), around(SQUARE, 19, 20));
  }

  @Test
  void aPointLiesOnAFlatLine() {
    assertEquals(strip(0, half(18), half(18)), around(SQUARE, 6, 6));
    assertEquals(strip(0, half(200), half(200)), around(SQUARE, 20, 20));
  }

  /** The chord falls by 10 over 8, so that the points lie at 10, 6.5, 10.5 and 10 over it. */
  @Test
  void aCurveOnBothSidesOfItsChord() {
    Strip strip = around(STAIR, 0, 16);
    assertEquals(BigFraction.of(-5, 4), strip.slope());
    assertEquals(Interval.closed(half(13), half(21)), strip.between());
  }
}
