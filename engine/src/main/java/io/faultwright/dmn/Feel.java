package io.faultwright.dmn;

import io.faultwright.quantity.Interval;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Literals of FEEL (DMN 1.3, chapter 10). Whatever a trainer wrote stays inside of a string. */
final class Feel {
  private Feel() {}

  /** A text as a string literal; anything but plain signs as an escape. */
  static String string(String text) {
    StringBuilder literal = new StringBuilder("\"");
    text.chars().forEach(unit -> append(literal, (char) unit));
    return literal.append('"').toString();
  }

  private static void append(StringBuilder literal, char unit) {
    if (unit == '"' || unit == '\\') {
      literal.append('\\').append(unit);
    } else if (Character.isISOControl(unit) || unit >= 0xFFFE || unit == 0x2028 || unit == 0x2029) {
      literal.append(String.format("\\u%04X", (int) unit));
    } else {
      literal.append(unit);
    }
  }

  static String list(Collection<String> texts) {
    return texts.stream().map(Feel::string).collect(Collectors.joining(", ", "[", "]"));
  }

  /**
   * A number with finite decimals.
   *
   * @throws ArithmeticException where it has none; {@link #whole} says what to multiply by first
   */
  static String number(BigFraction value) {
    BigDecimal exact =
        new BigDecimal(value.getNumerator()).divide(new BigDecimal(value.getDenominator()));
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }

  /** The least whole number that gives every one of some numbers finite decimals. */
  static BigInteger whole(Collection<BigFraction> numbers) {
    return numbers.stream()
        .map(number -> withoutTensOf(number.getDenominator()))
        .reduce(BigInteger.ONE, (a, b) -> a.multiply(b).divide(a.gcd(b)));
  }

  private static BigInteger withoutTensOf(BigInteger denominator) {
    BigInteger left = denominator.abs();
    for (BigInteger prime : List.of(BigInteger.TWO, BigInteger.valueOf(5))) {
      while (left.mod(prime).signum() == 0) {
        left = left.divide(prime);
      }
    }
    return left;
  }

  /** An interval as a unary test of a number that was multiplied. */
  static String interval(Interval interval, BigFraction times) {
    if (interval.low().isEmpty()) {
      return interval
          .high()
          .map(end -> (end.included() ? "<= " : "< ") + number(end.value().multiply(times)))
          .orElse("<= 0, > 0");
    }
    Interval.End low = interval.low().get();
    String from = number(low.value().multiply(times));
    if (interval.high().isEmpty()) {
      return (low.included() ? ">= " : "> ") + from;
    }
    Interval.End high = interval.high().get();
    String to = number(high.value().multiply(times));
    return from.equals(to)
        ? from
        : (low.included() ? "[" : "(") + from + ".." + to + (high.included() ? "]" : ")");
  }

  /**
   * A sum of multiplied names, without those that are multiplied by zero. What is added comes
   * before what is taken away, since a sign in front of a value that is not known is an error to
   * some engines.
   */
  static String sum(List<BigFraction> factors, List<String> names, BigFraction constant) {
    List<String> added = new ArrayList<>();
    List<String> taken = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      if (factors.get(i).signum() != 0) {
        (factors.get(i).signum() > 0 ? added : taken)
            .add(product(factors.get(i).abs(), names.get(i)));
      }
    }
    if (constant.signum() != 0) {
      (constant.signum() > 0 ? added : taken).add(number(constant.abs()));
    }
    String positive = added.isEmpty() ? "0" : String.join(" + ", added);
    boolean negative = added.isEmpty() && taken.size() == 1 && constant.signum() < 0;
    return negative
        ? "-" + taken.get(0)
        : positive + taken.stream().map(term -> " - " + term).collect(Collectors.joining());
  }

  private static String product(BigFraction factor, String name) {
    return factor.compareTo(BigFraction.ONE) == 0 ? name : number(factor) + " * " + name;
  }
}
