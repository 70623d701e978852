package io.faultwright.analysis.order;

/**
 * What checks cost, times the likelihood of being made.
 *
 * @param minutes as they pass
 * @param weighted every minute counted as its access says
 */
record Spent(double minutes, double weighted) {
  static final Spent NOTHING = new Spent(0, 0);

  Spent plus(Spent other) {
    return new Spent(minutes + other.minutes, weighted + other.weighted);
  }

  Spent times(double factor) {
    return new Spent(minutes * factor, weighted * factor);
  }
}
