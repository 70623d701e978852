package io.faultwright.quantity;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A unit of measurement, exact.
 *
 * @param symbol as the trade writes it, for instance {@code bar(g)}
 * @param dimension what it measures
 * @param scale base units in one of this unit
 * @param offset base units at this unit's zero
 */
public record Unit(String symbol, Dimension dimension, BigFraction scale, BigFraction offset) {
  /** The same quantity in another unit of the same dimension. */
  public BigFraction convert(BigFraction value, Unit to) {
    if (to.dimension != dimension) {
      throw new IllegalArgumentException(symbol + " does not convert to " + to.symbol);
    }
    return value.multiply(scale).add(offset).subtract(to.offset).divide(to.scale);
  }

  @Override
  public String toString() {
    return symbol;
  }
}
