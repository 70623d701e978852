package io.faultwright.grading;

/**
 * How well an item tells those who know from those who do not, by its discrimination.
 *
 * <p>Source: R. L. Ebel, "Measuring Educational Achievement" (1965); from memory.
 */
public enum Band {
  VERY_GOOD(0.40),
  GOOD(0.30),
  MARGINAL(0.20),
  POOR(Double.NEGATIVE_INFINITY);

  private final double from;

  Band(double from) {
    this.from = from;
  }

  /** The band of a discrimination from -1 to 1, looked at in hundredths as it is printed. */
  static Band of(double discrimination) {
    double shown = Math.round(100 * discrimination) / 100.0;
    for (Band band : values()) {
      if (shown >= band.from) {
        return band;
      }
    }
    throw new IllegalArgumentException("no discrimination: " + discrimination);
  }
}
