package io.faultwright.guided;

import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/** Exact numbers as text: a decimal where there is a finite one, else a fraction. */
final class Rationals {
  private Rationals() {}

  static String text(BigFraction number) {
    BigDecimal above = new BigDecimal(number.getNumerator());
    try {
      BigDecimal quotient = above.divide(new BigDecimal(number.getDenominator()));
      return quotient.stripTrailingZeros().toPlainString();
    } catch (ArithmeticException endless) {
      return number.getNumerator() + "/" + number.getDenominator();
    }
  }
}
