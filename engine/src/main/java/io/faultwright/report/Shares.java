package io.faultwright.report;

import io.faultwright.finding.Share;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Parts of the distinguishable situations in words. */
final class Shares {
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private Shares() {}

  /** {@code 3.1 %}, or bounds labelled as bounds. */
  static String words(Share share) {
    return share.exact()
        ? percent(share.low())
        : "between "
            + bound(share.low(), RoundingMode.FLOOR)
            + " and "
            + bound(share.high(), RoundingMode.CEILING)
            + " (bounds)";
  }

  /** {@code 3.1 %} of something, exactly. */
  static String words(double part) {
    return percent(part);
  }

  /** Four digits, rounded so that the bound stays one. */
  private static String bound(double part, RoundingMode away) {
    BigDecimal shown = BigDecimal.valueOf(part).multiply(HUNDRED).round(new MathContext(4, away));
    return shown.stripTrailingZeros().toPlainString() + " %";
  }

  /** Two significant digits below ten percent, whole percents above; never rounded to 0 or 100. */
  private static String percent(double part) {
    BigDecimal exact = BigDecimal.valueOf(part).multiply(HUNDRED);
    BigDecimal shown =
        exact.compareTo(BigDecimal.TEN) < 0
            ? exact.round(new MathContext(2, RoundingMode.HALF_UP))
            : exact.setScale(0, RoundingMode.HALF_UP);
    boolean nearlyAll = shown.compareTo(HUNDRED) == 0 && exact.compareTo(HUNDRED) < 0;
    return nearlyAll ? "over 99 %" : shown.stripTrailingZeros().toPlainString() + " %";
  }
}
