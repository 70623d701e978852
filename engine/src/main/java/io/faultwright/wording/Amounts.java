package io.faultwright.wording;

import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Amounts and intervals as the rule language writes them. */
final class Amounts {
  private static final MathContext ABOUT = new MathContext(4, RoundingMode.HALF_UP);

  private Amounts() {}

  /**
   * An amount with its unit, exact where any unit of its dimension has a finite decimal for it: a
   * threshold written as 65 °F is not shown as 18.333333 °C.
   */
  static String amount(BigFraction value, Unit unit) {
    Unit shown = exactUnit(value, unit);
    return Decimals.show(unit.convert(value, shown)) + " " + shown.symbol();
  }

  /** An amount in its own unit, rounded to four digits and marked as such where it has more. */
  static String about(BigFraction value, Unit unit) {
    BigDecimal numerator = new BigDecimal(value.getNumerator());
    BigDecimal rounded = numerator.divide(new BigDecimal(value.getDenominator()), ABOUT);
    BigFraction shown = Decimals.parse(rounded.toPlainString());
    return (shown.equals(value) ? "" : "about ") + Decimals.show(shown) + " " + unit.symbol();
  }

  /** The words for an interval; half-open intervals need two, see {@link #halves}. */
  static String interval(Interval interval, Unit unit) {
    return halves(interval, unit).reduce((low, high) -> low + " and " + high).orElse("any");
  }

  /** The patterns that together say the interval: none, one or two. */
  static Stream<String> halves(Interval interval, Unit unit) {
    return closed(interval, unit)
        .map(Stream::of)
        .orElseGet(
            () ->
                Stream.concat(
                    interval.low().stream().map(end -> low(end, unit)),
                    interval.high().stream().map(end -> high(end, unit))));
  }

  private static String low(End end, Unit unit) {
    return (end.included() ? "at least " : "above ") + amount(end.value(), unit);
  }

  private static String high(End end, Unit unit) {
    return (end.included() ? "at most " : "below ") + amount(end.value(), unit);
  }

  private static Optional<String> closed(Interval interval, Unit unit) {
    return interval
        .low()
        .filter(End::included)
        .flatMap(
            low ->
                interval
                    .high()
                    .filter(End::included)
                    .flatMap(high -> stretch(low.value(), high.value(), unit)));
  }

  /** Both ends in one pattern, which takes one unit for both. */
  private static Optional<String> stretch(BigFraction low, BigFraction high, Unit unit) {
    if (low.equals(high)) {
      return Optional.of(amount(low, unit));
    }
    return Optional.of(bare(low, unit) + " to " + amount(high, unit))
        .filter(both -> exactUnit(low, unit).equals(exactUnit(high, unit)));
  }

  private static String bare(BigFraction value, Unit unit) {
    return Decimals.show(unit.convert(value, exactUnit(value, unit)));
  }

  private static Unit exactUnit(BigFraction value, Unit unit) {
    return Stream.concat(
            Stream.of(unit), Units.symbols().stream().map(Units::find).flatMap(Optional::stream))
        .filter(other -> other.dimension() == unit.dimension())
        .filter(other -> isExact(unit.convert(value, other)))
        .findFirst()
        .orElse(unit);
  }

  private static boolean isExact(BigFraction value) {
    return Decimals.parse(Decimals.show(value)).equals(value);
  }
}
