package io.faultwright.wording;

import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Rounding;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A number as it is printed, and its unit.
 *
 * @param number decimal text
 */
record Figure(String number, Unit unit) {
  String words() {
    return number + " " + unit.symbol();
  }

  /** In its own unit, rounded only where it has no finite decimal. */
  static Figure own(BigFraction value, Unit unit) {
    return new Figure(Decimals.show(value), unit);
  }

  /**
   * Exact where any unit of its dimension has a finite decimal for it: a threshold written as 65 °F
   * is not shown as 18.333333 °C.
   */
  static Figure exact(BigFraction value, Unit unit) {
    Unit shown =
        Stream.concat(
                Stream.of(unit),
                Units.symbols().stream().map(Units::find).flatMap(Optional::stream))
            .filter(other -> other.dimension() == unit.dimension())
            .filter(other -> isFinite(unit.convert(value, other)))
            .findFirst()
            .orElse(unit);
    return own(unit.convert(value, shown), shown);
  }

  /** In another unit, with digits that fit the resolution. */
  static Figure converted(BigFraction value, Scale scale, Unit to) {
    if (to.equals(scale.unit()) && isFinite(value)) {
      return own(value, to);
    }
    BigFraction shown =
        Rounding.to(converted(step(value, scale), scale.unit(), to))
            .shown(scale.unit().convert(value, to));
    return own(shown, to);
  }

  /** A step of an instrument in another unit. */
  static Figure step(BigFraction resolution, Unit unit, Unit to) {
    return to.equals(unit)
        ? own(resolution, to)
        : own(Rounding.to(converted(resolution, unit, to)).step(), to);
  }

  private static BigFraction converted(BigFraction difference, Unit from, Unit to) {
    return Units.ofDifferences(from).convert(difference, Units.ofDifferences(to));
  }

  /**
   * What is told apart: the resolution, or what the digits of the number tell, if that is finer.
   */
  private static BigFraction step(BigFraction value, Scale scale) {
    BigFraction written = lastDigit(exact(value, scale.unit()), scale.unit());
    return scale.resolution().filter(given -> given.compareTo(written) < 0).orElse(written);
  }

  private static BigFraction lastDigit(Figure figure, Unit unit) {
    int decimals = Math.max(0, new BigDecimal(figure.number()).scale());
    return converted(BigFraction.of(10).pow(-decimals), figure.unit(), unit);
  }

  private static boolean isFinite(BigFraction value) {
    return Decimals.parse(Decimals.show(value)).equals(value);
  }
}
