package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.quantity.Polyline;
import io.faultwright.quantity.Polyline.Knot;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** On statements that form a tree bounds are exact; each is worked out by hand. */
class BoundsTest {
  private static final LinearForm X = LinearForm.variable(3, 0);
  private static final LinearForm Y = LinearForm.variable(3, 1);
  private static final LinearForm U = LinearForm.variable(3, 2);

  /** The square at whole numbers, straight between them, from 0 to 10. */
  private static final Polyline SQUARE =
      Polyline.through(
          IntStream.rangeClosed(0, 10).mapToObj(i -> new Knot(number(i), number(i * i))).toList());

  private static final Polyline FALLING =
      Polyline.through(
          List.of(
              new Knot(number(0), number(10)),
              new Knot(number(5), number(4)),
              new Knot(number(10), number(3))));

  private static BigFraction number(int value) {
    return BigFraction.of(value);
  }

  private static Interval closed(int low, int high) {
    return Interval.closed(number(low), number(high));
  }

  private static Interval ends(int low, boolean atLow, int high, boolean atHigh) {
    return new Interval(
        Optional.of(new End(number(low), atLow)), Optional.of(new End(number(high), atHigh)));
  }

  private static CurvedSystem along(Polyline curve) {
    return CurvedSystem.free(3).with(reading(curve, curve.domain()));
  }

  private static CurvedSystem.Reading reading(Polyline curve, Interval reach) {
    return new CurvedSystem.Reading(2, curve, X, reach);
  }

  private static Bounds of(CurvedSystem system) {
    return Bounds.of(system, Optional.empty()).orElseThrow();
  }

  private static void bounded(Interval x, Interval u, CurvedSystem system) {
    Bounds bounds = of(system);
    assertEquals(x, bounds.of(X));
    assertEquals(u, bounds.of(U));
  }

  private static CurvedSystem sum() {
    return CurvedSystem.free(3)
        .with(X, closed(1, 4))
        .with(Y, closed(2, 9))
        .with(X.plus(Y).minus(U), Interval.point(number(0)))
        .with(U, Interval.atMost(number(6)));
  }

  @Test
  void aSumBoundsEachOfItsTerms() {
    Bounds bounds = of(sum());
    assertEquals(closed(1, 4), bounds.of(X));
    assertEquals(closed(2, 5), bounds.of(Y));
    assertEquals(closed(3, 6), bounds.of(U));
    assertEquals(closed(-3, 3), bounds.of(X.minus(Y).plus(number(1))));
  }

  @Test
  void factorsOfEitherSign() {
    CurvedSystem system =
        CurvedSystem.free(3)
            .with(X, closed(1, 4))
            .with(X.times(number(2)).plus(Y.times(number(3))), Interval.point(number(11)))
            .with(U.times(number(-5)).plus(X), closed(-6, -1));
    Bounds bounds = of(system);
    assertEquals(closed(1, 3), bounds.of(Y));
    assertEquals(new Interval(end(2, 5), end(2, 1)), bounds.of(U));
  }

  private static Optional<End> end(int numerator, int denominator) {
    return Optional.of(new End(BigFraction.of(numerator, denominator), true));
  }

  @Test
  void anEndThatIsNotReachedIsPassedOn() {
    CurvedSystem system =
        CurvedSystem.free(3)
            .with(X, Interval.above(number(1)))
            .with(Y, Interval.atLeast(number(2)))
            .with(X.plus(Y), Interval.atMost(number(6)))
            .with(U.minus(Y), Interval.point(number(1)));
    Bounds bounds = of(system);
    assertEquals(ends(1, false, 4, true), bounds.of(X));
    assertEquals(ends(2, true, 5, false), bounds.of(Y));
    assertEquals(ends(3, true, 6, false), bounds.of(U));
    assertEquals(
        ends(2, true, 5, false),
        of(CurvedSystem.free(3)
                .with(X, Interval.atLeast(number(1)))
                .with(Y, Interval.atLeast(number(2)))
                .with(X.plus(Y), Interval.below(number(6))))
            .of(Y));
  }

  @Test
  void twoOpenTermsBoundNothing() {
    CurvedSystem system =
        CurvedSystem.free(3)
            .with(X, closed(1, 4))
            .with(X.plus(Y).minus(U), Interval.point(number(0)));
    Interval free = new Interval(Optional.empty(), Optional.empty());
    assertEquals(free, of(system).of(Y));
    assertEquals(free, of(system).of(U));
  }

  @Test
  void nothingIsLeftOfAContradiction() {
    CurvedSystem apart = CurvedSystem.free(3).with(X, closed(5, 6)).with(Y, closed(0, 4));
    assertEquals(
        Optional.empty(),
        Bounds.of(apart.with(Y.minus(X), Interval.atLeast(number(0))), Optional.empty()));
    assertEquals(
        Optional.empty(),
        Bounds.of(along(SQUARE).with(U, Interval.above(number(100))), Optional.empty()));
    assertEquals(
        Optional.empty(),
        Bounds.of(along(SQUARE).with(X, Interval.above(number(10))), Optional.empty()));
  }

  @Test
  void aCurvesValueFollowsItsArgument() {
    bounded(
        ends(3, true, 5, false),
        ends(9, true, 25, false),
        along(SQUARE).with(X, ends(3, true, 5, false)));
    bounded(
        ends(5, false, 10, true),
        ends(3, true, 4, false),
        along(FALLING).with(X, Interval.above(number(5))));
  }

  @Test
  void theArgumentFollowsTheValue() {
    bounded(
        ends(4, false, 7, true),
        ends(16, false, 49, true),
        along(SQUARE).with(U, ends(16, false, 49, true)));
    bounded(
        ends(0, true, 5, false),
        ends(4, false, 10, true),
        along(FALLING).with(U, Interval.above(number(4))));
  }

  @Test
  void whatIsKnownBeforeStaysKnown() {
    CurvedSystem wide = along(SQUARE).with(X, closed(0, 6));
    Bounds wider = of(wide);
    Bounds narrower =
        Bounds.of(wide.with(U, Interval.atLeast(number(25))), Optional.of(wider)).orElseThrow();
    assertEquals(closed(5, 6), narrower.of(X));
    assertEquals(closed(25, 36), narrower.of(U));
    assertEquals(closed(0, 6), wider.of(X), "the wider ones stay as they are");
  }

  @Test
  void piecesOfACurve() {
    assertEquals(10, pieces(closed(0, 10)));
    assertEquals(2, pieces(closed(3, 5)));
    assertEquals(1, pieces(closed(5, 5)));
    assertEquals(1, pieces(closed(10, 10)));
    assertEquals(1, pieces(closed(9, 10)));
    assertEquals(2, pieces(Interval.closed(BigFraction.of(7, 2), BigFraction.of(9, 2))));
    CurvedSystem.Reading part = reading(SQUARE, closed(2, 4));
    assertEquals(2, of(along(SQUARE).with(part)).pieces(part));
    assertEquals(closed(2, 4), of(along(SQUARE).with(part)).reach(part));
  }

  private static int pieces(Interval x) {
    return of(along(SQUARE).with(X, x)).pieces(reading(SQUARE, SQUARE.domain()));
  }

  @Test
  void aPointNearTheMiddleOfThePieces() {
    assertEquals(number(4), middle(closed(3, 5)));
    assertEquals(number(5), middle(closed(3, 7)));
    assertEquals(number(5), middle(closed(0, 10)));
    assertEquals(number(9), middle(closed(8, 10)));
  }

  private static BigFraction middle(Interval x) {
    return of(along(SQUARE).with(X, x)).middlePoint(reading(SQUARE, SQUARE.domain()));
  }

  /** 2 for x, then 2 out of the 2 to 4 that are left for y, then the only value for u. */
  @Test
  void aGuessIsRoundAndHeedsWhatIsLeft() {
    assertEquals(Optional.of(List.of(number(2), number(2), number(4))), of(sum()).guess());
    assertTrue(sum().holds(of(sum()).guess().orElseThrow()));
  }
}
