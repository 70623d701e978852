package io.faultwright.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Decimal text to exact rationals and back. */
public final class Decimals {
  private static final Pattern PLAIN = Pattern.compile("[+-]?\\d+(\\.\\d+)?");
  private static final int SHOWN_DIGITS = 6;
  private static final long COMPUTED_PLACES = 10_000_000_000L;

  private Decimals() {}

  /**
   * The exact value of plain decimal text such as {@code -12.50}.
   *
   * @throws NumberFormatException for anything else
   */
  public static BigFraction parse(String text) {
    if (!PLAIN.matcher(text).matches()) {
      throw new NumberFormatException("not a decimal number: " + text);
    }
    BigDecimal value = new BigDecimal(text);
    return BigFraction.of(value.unscaledValue(), BigInteger.TEN.pow(Math.max(0, value.scale())));
  }

  /** A computed figure to ten decimal places: exact from here on, and cheap to reckon with. */
  static BigFraction rounded(double value) {
    return BigFraction.of(Math.round(value * COMPUTED_PLACES), COMPUTED_PLACES);
  }

  /**
   * Decimal text without trailing zeros; exact where the value has a finite decimal form of at most
   * 12 places, else rounded half up to six places.
   */
  public static String show(BigFraction value) {
    return exact(value)
        .orElseGet(
            () ->
                new BigDecimal(value.getNumerator())
                    .divide(
                        new BigDecimal(value.getDenominator()), SHOWN_DIGITS, RoundingMode.HALF_UP))
        .stripTrailingZeros()
        .toPlainString();
  }

  private static java.util.Optional<BigDecimal> exact(BigFraction value) {
    try {
      BigDecimal quotient =
          new BigDecimal(value.getNumerator()).divide(new BigDecimal(value.getDenominator()));
      return java.util.Optional.of(quotient).filter(q -> q.stripTrailingZeros().scale() <= 12);
    } catch (ArithmeticException endless) {
      return java.util.Optional.empty();
    }
  }
}
