package io.faultwright.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What the library's exact numbers lack: comparisons of everyday size without large-number
 * arithmetic, and questions that do not mind a sign below the line, which quotients can have.
 */
public final class Exact {
  private static final int SMALL_BITS = 31;

  private Exact() {}

  /** As {@link BigFraction#compareTo}. */
  public static int compare(BigFraction a, BigFraction b) {
    BigInteger up = a.getNumerator();
    BigInteger down = a.getDenominator();
    BigInteger otherUp = b.getNumerator();
    BigInteger otherDown = b.getDenominator();
    if (isSmall(up) && isSmall(down) && isSmall(otherUp) && isSmall(otherDown)) {
      return Long.compare(
          up.longValue() * otherDown.longValue() * down.signum() * otherDown.signum(),
          otherUp.longValue() * down.longValue() * down.signum() * otherDown.signum());
    }
    return a.compareTo(b);
  }

  /** Whether a number is a whole one. */
  public static boolean isWhole(BigFraction number) {
    return number.getDenominator().abs().equals(BigInteger.ONE);
  }

  /** The largest whole number that is not above it. */
  public static BigInteger floor(BigFraction number) {
    return new BigDecimal(number.getNumerator())
        .divide(new BigDecimal(number.getDenominator()), 0, RoundingMode.FLOOR)
        .toBigInteger();
  }

  private static boolean isSmall(BigInteger number) {
    return number.bitLength() <= SMALL_BITS;
  }
}
