package io.faultwright.layout;

/** Rounding to the half points on which everything stands. */
final class Grid {
  private Grid() {}

  /** The nearest half point. */
  static double half(double value) {
    return Math.round(value * 2) / 2.0;
  }

  /** The next whole point at or above. */
  static double up(double value) {
    return Math.ceil(value - 1e-9);
  }

  /** The next even number of points at or above. */
  static double even(double value) {
    return 2 * Math.ceil(value / 2 - 1e-9);
  }
}
