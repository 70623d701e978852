package io.faultwright.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Figures of grades as they are printed. */
final class Figures {
  private Figures() {}

  /** Whole hundredths of a share of 1. */
  static String percent(double share) {
    return rounded(100 * share, 0);
  }

  /** Two digits after the point; a dash where there is none. */
  static String two(Optional<Double> figure) {
    return figure.map(Figures::two).orElse("-");
  }

  static String two(double figure) {
    return rounded(figure, 2);
  }

  private static String rounded(double figure, int digits) {
    BigDecimal rounded = new BigDecimal(figure).setScale(digits, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }
}
