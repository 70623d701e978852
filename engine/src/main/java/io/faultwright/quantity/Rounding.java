package io.faultwright.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How an amount is rounded when it is shown in another unit.
 *
 * <p>An instrument in the other unit reads to a step of 1, 2 or 5 times a power of ten: the largest
 * that is not coarser than the resolution, converted. An amount that lies on such a step is shown
 * as it is. Any other is rounded to as few decimals as leave it between the same two steps. So
 * every value that the instrument can show lies on the same side of the shown amount as of the true
 * one: 65 °C read to 1 °C become 149 °F, and 8.2 bar(g) read to 0.1 bar become 118.9 psi(g), not
 * 119, which is a step above it.
 */
public final class Rounding {
  private final BigFraction step;

  private Rounding(BigFraction step) {
    this.step = step;
  }

  /**
   * For amounts of which the given difference can just be told apart.
   *
   * @param resolution greater than zero
   */
  public static Rounding to(BigFraction resolution) {
    if (resolution.signum() <= 0) {
      throw new IllegalArgumentException("not a resolution: " + resolution);
    }
    return new Rounding(stepWithin(resolution));
  }

  private static BigFraction stepWithin(BigFraction resolution) {
    BigFraction power = BigFraction.ONE;
    while (power.compareTo(resolution) > 0) {
      power = power.divide(10);
    }
    while (power.multiply(10).compareTo(resolution) <= 0) {
      power = power.multiply(10);
    }
    for (int digit : new int[] {5, 2}) {
      if (power.multiply(digit).compareTo(resolution) <= 0) {
        return power.multiply(digit);
      }
    }
    return power;
  }

  /**
   * The nearest figure with so many decimals, trailing zeros included, for the columns of a table
   * of properties; thresholds are never rounded so.
   */
  public static String column(BigFraction amount, int decimals) {
    return new BigDecimal(amount.getNumerator())
        .divide(new BigDecimal(amount.getDenominator()), decimals, RoundingMode.HALF_UP)
        .toPlainString();
  }

  /** What an instrument in this unit reads to. */
  public BigFraction step() {
    return step;
  }

  /** The amount as it is shown. */
  public BigFraction shown(BigFraction amount) {
    if (isOnStep(amount)) {
      return amount;
    }
    int decimals = decimals();
    while (!isBetweenTheSameSteps(rounded(amount, decimals), amount)) {
      decimals++;
    }
    return rounded(amount, decimals);
  }

  private int decimals() {
    return Math.max(0, new BigDecimal(Decimals.show(step)).scale());
  }

  private static BigFraction rounded(BigFraction amount, int decimals) {
    BigDecimal quotient =
        new BigDecimal(amount.getNumerator())
            .divide(new BigDecimal(amount.getDenominator()), decimals, RoundingMode.HALF_UP);
    return Decimals.parse(quotient.toPlainString());
  }

  private boolean isOnStep(BigFraction amount) {
    return Exact.isWhole(amount.divide(step));
  }

  private boolean isBetweenTheSameSteps(BigFraction shown, BigFraction amount) {
    return !isOnStep(shown) && floor(shown).equals(floor(amount));
  }

  private BigInteger floor(BigFraction amount) {
    return Exact.floor(amount.divide(step));
  }
}
