package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Line;
import io.faultwright.quantity.Polyline;
import io.faultwright.quantity.Polyline.Knot;
import io.faultwright.quantity.Refrigerants;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Systems with curves, each answered by hand; the variables are x, y and u, read off at x. */
class CurvedSystemTest {
  private static final LinearForm X = LinearForm.variable(3, 0);
  private static final LinearForm Y = LinearForm.variable(3, 1);
  private static final LinearForm U = LinearForm.variable(3, 2);

  /** The square at whole numbers, straight between them, from 0 to 10. */
  private static final Polyline SQUARE = square();

  private static Polyline square() {
    List<Knot> knots = new ArrayList<>();
    for (int i = 0; i <= 10; i++) {
      knots.add(new Knot(BigFraction.of(i), BigFraction.of(i * i)));
    }
    return Polyline.through(knots);
  }

  private static CurvedSystem squares() {
    return CurvedSystem.free(3).with(new CurvedSystem.Reading(2, SQUARE, X, SQUARE.domain()));
  }

  private static BigFraction number(int value) {
    return BigFraction.of(value);
  }

  @Test
  void aCurveBindsItsValueToItsArgument() {
    CurvedSystem system = squares().with(X, Interval.closed(number(3), number(5)));
    assertTrue(system.with(U, Interval.point(number(9))).isSolvable());
    assertTrue(system.with(U, Interval.point(number(20))).isSolvable());
    assertFalse(system.with(U, Interval.above(number(25))).isSolvable());
    assertFalse(system.with(U, Interval.below(number(9))).isSolvable());
    assertEquals(Optional.of(Interval.closed(number(9), number(25))), system.image(U));
  }

  @Test
  void theArgumentFollowsFromTheValue() {
    CurvedSystem system = squares().with(U, Interval.above(number(30)));
    BigFraction root = number(5).add(BigFraction.of(5, 11));
    assertFalse(system.with(X, Interval.atMost(root)).isSolvable());
    assertTrue(system.with(X, Interval.above(root)).isSolvable());
  }

  @Test
  void outsideTheCurveThereIsNoSolution() {
    assertFalse(squares().with(X, Interval.above(number(10))).isSolvable());
    assertTrue(squares().with(X, Interval.atLeast(number(10))).isSolvable());
    assertFalse(squares().with(X, Interval.below(number(0))).isSolvable());
  }

  /** y = u - x x would need u above 3x: bounds alone do not see it, halves of the curve do. */
  @Test
  void aCircleOfStatementsIsDecidedPieceByPiece() {
    CurvedSystem chord =
        squares()
            .with(Y.minus(X.times(number(10))), Interval.point(number(0)))
            .with(U.minus(Y), Interval.above(number(0)));
    assertFalse(chord.isSolvable(), "the square lies on or below its chord from 0 to 10");
    CurvedSystem touching =
        squares()
            .with(Y.minus(X.times(number(10))), Interval.point(number(0)))
            .with(U.minus(Y), Interval.atLeast(number(0)))
            .with(X, Interval.above(number(0)));
    assertEquals(Optional.of(number(10)), touching.solution().map(point -> point.get(0)));
  }

  @Test
  void aTangentTouchesInOnePlaceOnly() {
    CurvedSystem under = squares().with(U.minus(X.times(number(5))), Interval.atMost(number(-6)));
    assertTrue(under.with(X, Interval.closed(number(2), number(3))).isSolvable());
    assertFalse(under.with(X, Interval.below(number(2))).isSolvable());
    assertFalse(under.with(X, Interval.above(number(3))).isSolvable());
    assertFalse(
        squares().with(U.minus(X.times(number(5))), Interval.below(number(-6))).isSolvable());
  }

  @Test
  void aSolutionSatisfiesEverything() {
    CurvedSystem system =
        squares()
            .with(U.minus(Y), Interval.closed(number(1), number(2)))
            .with(Y, Interval.above(number(40)))
            .with(X.plus(Y), Interval.below(number(60)));
    List<BigFraction> point = system.solution().orElseThrow();
    assertTrue(system.holds(point));
    assertFalse(system.holds(List.of(point.get(0), point.get(1), point.get(2).add(1))));
  }

  @Test
  void aFallingCurveWorksTheSame() {
    Polyline falling =
        Polyline.through(
            List.of(
                new Knot(number(0), number(10)),
                new Knot(number(5), number(4)),
                new Knot(number(10), number(3))));
    CurvedSystem system =
        CurvedSystem.free(3)
            .with(new CurvedSystem.Reading(2, falling, X, falling.domain()))
            .with(X, Interval.above(number(5)));
    assertEquals(Optional.of(new Interval(end(3, true), end(4, false))), system.image(U));
    assertTrue(system.with(U, Interval.point(BigFraction.of(7, 2))).isSolvable());
    assertFalse(system.with(U, Interval.atLeast(number(4))).isSolvable());
  }

  private static Optional<Interval.End> end(int value, boolean included) {
    return Optional.of(new Interval.End(number(value), included));
  }

  @Test
  void aCurveOverItsOwnValueIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new CurvedSystem.Reading(2, SQUARE, U, SQUARE.domain()));
  }

  @Test
  void onlyWhatIsReadOffACurveIsBound() {
    assertTrue(squares().reads(2));
    assertFalse(squares().reads(0));
    assertFalse(CurvedSystem.free(3).reads(2));
    assertTrue(squares().holds(List.of(number(3), number(7), number(9))));
    assertFalse(squares().holds(List.of(number(3), number(7), number(10))));
    assertFalse(squares().holds(List.of(number(11), number(7), number(121))));
  }

  /** The square of y is 16 more than that of x, as it is for 0 and 4, and for 3 and 5. */
  @Test
  void twoCurvesAtOnce() {
    LinearForm x = LinearForm.variable(4, 0);
    LinearForm y = LinearForm.variable(4, 1);
    LinearForm u = LinearForm.variable(4, 2);
    LinearForm v = LinearForm.variable(4, 3);
    CurvedSystem system =
        CurvedSystem.free(4)
            .with(new CurvedSystem.Reading(2, SQUARE, x, SQUARE.domain()))
            .with(new CurvedSystem.Reading(3, SQUARE, y, SQUARE.domain()))
            .with(v.minus(u), Interval.point(number(16)));
    assertEquals(2, system.readings().size());
    List<BigFraction> fromThree =
        system.with(x, Interval.point(number(3))).solution().orElseThrow();
    assertEquals(List.of(number(3), number(5), number(9), number(25)), fromThree);
    assertFalse(system.with(y, Interval.below(number(4))).isSolvable());
    assertTrue(system.with(y, Interval.point(number(4))).isSolvable());
    CurvedSystem again =
        system.with(new CurvedSystem.Reading(2, SQUARE, x, Interval.closed(number(3), number(4))));
    assertEquals(2, again.readings().size(), "the part replaces the whole");
    assertFalse(again.with(v, Interval.below(number(25))).isSolvable());
  }

  @Test
  void joinedSolutionsReachFromTheLeastToTheLargest() {
    Solutions solutions =
        Solutions.of(CurvedSystem.free(3))
            .flatMap(
                all ->
                    Stream.of(
                        all.with(X, Interval.closed(number(1), number(2))),
                        all.with(X, new Interval(end(5, true), end(6, false))),
                        all.with(X, Interval.above(number(7))).with(X, Interval.below(number(6)))));
    assertEquals(2, solutions.solvable().parts().size());
    assertEquals(
        Optional.of(new Interval(end(1, true), end(6, false))), solutions.solvable().image(X));
    Solutions late = solutions.solvable().with(X, Interval.atLeast(number(3)));
    assertEquals(1, late.solvable().parts().size());
    assertTrue(late.with(X, Interval.below(number(3))).solvable().isEmpty());
  }

  /**
   * R-404A at 300.0 kPa: dew -20.016 °C. From the 2003 equations of Lemmon, Int. J. Thermophys.
   * 24(4): a line at -12.0 °C has 8.016 K of superheat.
   */
  @Test
  void superheatIsDecidedOnTheSaturationLine() {
    Polyline dew = Refrigerants.find("R-404A").orElseThrow().line(Line.DEW);
    CurvedSystem system =
        CurvedSystem.free(3)
            .with(new CurvedSystem.Reading(2, dew, X, dew.domain()))
            .with(X, Interval.point(number(3)))
            .with(Y, Interval.point(number(-12)));
    LinearForm superheat = Y.minus(U);
    assertTrue(system.with(superheat, within("8.008", "8.024")).isSolvable());
    assertFalse(system.with(superheat, Interval.above(parse("8.024"))).isSolvable());
    assertFalse(system.with(superheat, Interval.below(parse("8.008"))).isSolvable());
  }

  private static Interval within(String low, String high) {
    return Interval.closed(parse(low), parse(high));
  }

  private static BigFraction parse(String text) {
    return Decimals.parse(text);
  }
}
