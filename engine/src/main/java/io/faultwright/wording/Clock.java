package io.faultwright.wording;

import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Exact;
import io.faultwright.words.Words;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Times since a beginning as a clock shows them: {@code 1:28}, {@code 1:02:03}, {@code 0:00.5}. */
public final class Clock {
  private static final Times ENGLISH = new Times(Words.ENGLISH);
  private static final BigInteger SIXTY = BigInteger.valueOf(60);

  private Clock() {}

  /** Minutes and seconds, and hours where there are some. */
  public static String of(BigFraction seconds) {
    BigInteger whole = Exact.floor(seconds);
    String rest = Decimals.show(seconds.subtract(whole)).replaceFirst("^0", "");
    BigInteger[] minutes = whole.divideAndRemainder(SIXTY);
    BigInteger[] hours = minutes[0].divideAndRemainder(SIXTY);
    String clock =
        hours[0].signum() == 0
            ? minutes[0] + ":" + two(minutes[1])
            : hours[0] + ":" + two(hours[1]) + ":" + two(minutes[1]);
    return clock + rest;
  }

  /** How long something lasts: {@code 40 s}, {@code 6 min}, {@code 1 min 30 s}, {@code 2 h}. */
  public static String lasting(BigFraction seconds) {
    return ENGLISH.span(seconds).replace('\u00A0', ' ');
  }

  private static String two(BigInteger number) {
    return number.intValue() < 10 ? "0" + number : number.toString();
  }
}
