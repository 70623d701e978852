package io.faultwright.quantity;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Comparisons of exact numbers; those of everyday size without large-number arithmetic. */
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

  private static boolean isSmall(BigInteger number) {
    return number.bitLength() <= SMALL_BITS;
  }
}
