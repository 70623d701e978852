package io.faultwright.sequence;

/**
 * An order of checks, with what it costs on average.
 *
 * @param first the first step
 * @param minutes expected
 * @param weighted expected, every outlay counted as its weight says
 * @param atLeast no order whatever costs less than this, weighted; proved
 * @param effort how many sets of situations were looked into
 */
public record Order(Step first, double minutes, double weighted, double atLeast, long effort) {
  /** Differences below this share of the cost are rounding. */
  static final double ROUNDING = 1e-9;

  /** Whether this is proved to be the cheapest order. */
  public boolean exact() {
    return weighted - atLeast <= ROUNDING * weighted;
  }

  /** By how much, as a share of the cost, a cheaper order could be cheaper at most. */
  public double gap() {
    return exact() ? 0 : (weighted - atLeast) / weighted;
  }
}
