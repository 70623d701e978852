package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Polyline;
import io.faultwright.quantity.Polyline.Knot;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** The roundest value that a form really has, though bounds around it are wider. */
class RoundValueTest {
  private static final LinearForm X = LinearForm.variable(2, 0);
  private static final LinearForm U = LinearForm.variable(2, 1);

  /** The square at whole numbers, straight between them, from 0 to 10. */
  private static final Polyline SQUARE =
      Polyline.through(
          IntStream.rangeClosed(0, 10)
              .mapToObj(i -> new Knot(BigFraction.of(i), BigFraction.of(i * i)))
              .toList());

  private static final CurvedSystem SQUARES =
      CurvedSystem.free(2).with(new CurvedSystem.Reading(1, SQUARE, X, SQUARE.domain()));

  private static BigFraction number(String text) {
    return Decimals.parse(text);
  }

  private static void chosen(String expected, CurvedSystem system, LinearForm form) {
    assertEquals(number(expected), RoundValue.of(system, form, Optional.empty()));
  }

  @Test
  void withoutCurvesTheRoundestOfAll() {
    CurvedSystem system = CurvedSystem.free(2).with(X, Interval.closed(number("12"), number("27")));
    chosen("20", system, X);
    assertEquals(number("21"), RoundValue.of(system, X, Optional.of(number("7"))));
  }

  @Test
  void theRoundestOfTheBoundsWhereItFits() {
    chosen("20", SQUARES.with(X, Interval.closed(number("4"), number("5"))), U);
  }

  /**
   * For x from 4.2 to 4.7 the square minus 8.37 x runs from -17.354 to -17.039; bounds alone say
   * -21.539 to -12.854.
   */
  @Test
  void aRoundValueNearOneThatIsSure() {
    CurvedSystem system = SQUARES.with(X, Interval.closed(number("4.2"), number("4.7")));
    chosen("-17.2", system, U.minus(X.times(number("8.37"))));
  }

  /** Only at 2 does the square come down to 4 x - 4: a seventh of that is no round number. */
  @Test
  void theOnlyValueHoweverUnround() {
    CurvedSystem system =
        SQUARES.with(U.minus(X.times(number("4"))), Interval.atMost(number("-4")));
    LinearForm seventh = X.times(BigFraction.of(1, 7));
    assertEquals(BigFraction.of(2, 7), RoundValue.of(system, seventh, Optional.empty()));
  }
}
