package io.faultwright.analysis.order;

/**
 * What an order of checks costs on average.
 *
 * @param minutes expected
 * @param weighted expected, every minute counted as its access says
 * @param atLeast no order whatever costs less than this, weighted; proved
 */
public record OrderCost(double minutes, double weighted, double atLeast) {
  /** Differences below this share are rounding. */
  private static final double ROUNDING = 1e-6;

  /** By how much, as a share of the cost, another order could be cheaper at most; 0 for none. */
  public double gap() {
    double gap = weighted == 0 ? 0 : (weighted - atLeast) / weighted;
    return gap < ROUNDING ? 0 : gap;
  }
}
