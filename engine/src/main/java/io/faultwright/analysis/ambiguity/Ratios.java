package io.faultwright.analysis.ambiguity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import org.apache.commons.numbers.fraction.BigFraction;

/** Parts of a whole, rounded to nine digits so that every machine writes the same. */
final class Ratios {
  private static final MathContext NINE = new MathContext(9);

  private Ratios() {}

  /** How much of a whole, not zero, a part is. */
  static double of(BigInteger part, BigInteger whole) {
    return rounded(BigFraction.of(part, whole).doubleValue());
  }

  static double rounded(double exact) {
    return BigDecimal.valueOf(exact).round(NINE).doubleValue();
  }
}
