package io.faultwright.grading;

import java.util.Arrays;

/**
 * The participants with the highest and the lowest totals, 27 in a hundred of each. Where several
 * have the total at the border, each counts in part, so that no order among them matters.
 *
 * <p>Source of the 27: T. L. Kelley, "The selection of upper and lower groups for the validation of
 * test items", Journal of Educational Psychology 30 (1939); from memory.
 */
final class Groups {
  private static final double SHARE = 0.27;

  private final double[] upper;
  private final double[] lower;
  private final double size;

  /**
   * Groups.
   *
   * @param totals of each participant; at least one
   */
  Groups(int[] totals) {
    this.size = Math.max(1, Math.round(SHARE * totals.length));
    this.lower = weights(totals);
    this.upper = weights(Arrays.stream(totals).map(total -> -total).toArray());
  }

  /** How much each participant counts among the lowest. */
  private double[] weights(int[] totals) {
    int[] sorted = totals.clone();
    Arrays.sort(sorted);
    int border = sorted[(int) size - 1];
    long below = Arrays.stream(totals).filter(total -> total < border).count();
    long there = Arrays.stream(totals).filter(total -> total == border).count();
    double each = (size - below) / there;
    return Arrays.stream(totals)
        .mapToDouble(total -> total < border ? 1 : total == border ? each : 0)
        .toArray();
  }

  /** Share of the highest for whom something holds. */
  double upper(boolean[] holds) {
    return share(upper, holds);
  }

  /** Share of the lowest for whom something holds. */
  double lower(boolean[] holds) {
    return share(lower, holds);
  }

  private double share(double[] weights, boolean[] holds) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += holds[i] ? weights[i] : 0;
    }
    return sum / size;
  }
}
