package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** The number that a person would write; each worked out by hand. */
class RoundNumberTest {
  private static BigFraction number(String text) {
    return Decimals.parse(text);
  }

  private static Interval closed(String low, String high) {
    return Interval.closed(number(low), number(high));
  }

  private static Interval open(String low, String high) {
    return new Interval(
        Optional.of(new End(number(low), false)), Optional.of(new End(number(high), false)));
  }

  private static void chosen(String expected, Interval interval) {
    assertEquals(number(expected), RoundNumber.in(interval, Optional.empty()));
  }

  private static void chosen(String expected, Interval interval, String resolution) {
    assertEquals(number(expected), RoundNumber.in(interval, Optional.of(number(resolution))));
  }

  @Test
  void theLargestStepThatHasAMultipleInside() {
    chosen("0", closed("-40", "30"));
    chosen("1000", closed("900", "1400"));
    chosen("500", closed("420", "760"));
    chosen("20", closed("12", "27"));
    chosen("7", open("6", "8"));
    chosen("6.5", open("6", "7"));
    chosen("0.02", open("0.01", "0.03"));
    chosen("-6.5", open("-7", "-6"));
  }

  @Test
  void theMultipleNearestToTheMiddle() {
    chosen("200", closed("150", "320"));
    chosen("-20", closed("-27", "-12"));
    chosen("20", closed("11", "29"));
  }

  @Test
  void ofTwoInsideTheNearerAndElseTheLower() {
    chosen("8", closed("6", "8.5"));
    chosen("6", closed("5.5", "8"));
    chosen("6", closed("6", "8"));
    chosen("-8", closed("-8", "-6"));
  }

  @Test
  void theFartherWhereTheNearerIsExcluded() {
    Optional<End> low = Optional.of(new End(number("6"), false));
    chosen("8", new Interval(low, Optional.of(new End(number("8"), true))));
  }

  @Test
  void theMiddleOfWhatIsTooNarrowForAnyStep() {
    BigFraction tiny = BigFraction.of(10).pow(-24);
    Interval narrow = Interval.closed(tiny.multiply(1234), tiny.multiply(1235));
    assertEquals(tiny.multiply(2469).divide(2), RoundNumber.in(narrow, Optional.empty()));
  }

  /** A quotient may have its sign below the line. */
  @Test
  void howeverTheEndsWereComputed() {
    BigFraction low = BigFraction.of(-12).divide(BigFraction.of(-1));
    chosen("20", Interval.closed(low, number("27")));
    chosen("-20", Interval.closed(number("-27"), BigFraction.of(12).divide(BigFraction.of(-1))));
  }

  @Test
  void anEndCountsWhereItIsIncluded() {
    chosen("10", closed("10", "10.4"));
    chosen("10.2", open("10", "10.4"));
  }

  @Test
  void aPointIsItself() {
    chosen("3.14159", closed("3.14159", "3.14159"));
    chosen("3.14159", closed("3.14159", "3.14159"), "0.5");
  }

  @Test
  void onlyWhatTheInstrumentShows() {
    chosen("6.5", open("6.1", "6.9"), "0.5");
    chosen("6.3", open("6.1", "6.6"), "0.3");
    chosen("12", open("10", "14"), "3");
    chosen("100", closed("95", "106"), "0.1");
  }

  @Test
  void aGridTooCoarseIsNotHeeded() {
    chosen("6.2", open("6.1", "6.3"), "0.5");
  }

  @Test
  void anywhereInAnUnboundedInterval() {
    assertEquals(number("6"), RoundNumber.anywhere(Interval.above(number("5"))));
    assertEquals(number("4"), RoundNumber.anywhere(Interval.below(number("5"))));
    assertEquals(
        number("0"), RoundNumber.anywhere(new Interval(Optional.empty(), Optional.empty())));
    assertEquals(number("20"), RoundNumber.anywhere(closed("12", "27")));
  }
}
