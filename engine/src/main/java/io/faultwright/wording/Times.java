package io.faultwright.wording;

import io.faultwright.quantity.Decimals;
import io.faultwright.words.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** Seconds in words. */
public final class Times {
  /** As reports say them. */
  public static final Times ENGLISH = new Times(Words.ENGLISH);

  private static final BigFraction SIXTY = BigFraction.of(60);
  private static final BigFraction TWO_HOURS = BigFraction.of(7200);
  private static final String JOINED = "\u00A0";

  private final Words say;

  public Times(Words say) {
    this.say = say;
  }

  /** How long something lasts: {@code 40 s}, {@code 3 min}, {@code 1 min 30 s}, {@code 8 h}. */
  public String span(BigFraction seconds) {
    if (seconds.compareTo(SIXTY) < 0) {
      return figure(seconds, "s");
    }
    List<String> parts = new ArrayList<>();
    BigFraction rest = seconds;
    if (seconds.compareTo(TWO_HOURS) >= 0) {
      rest = whole(rest, SIXTY.multiply(SIXTY), "h", parts);
    }
    rest = whole(rest, SIXTY, "min", parts);
    if (rest.signum() > 0) {
      parts.add(figure(rest, "s"));
    }
    return String.join(JOINED, parts);
  }

  /** Takes as many of a unit as go into it; what is left over. */
  private BigFraction whole(
      BigFraction seconds, BigFraction unit, String sign, List<String> parts) {
    BigFraction many = seconds.divide(unit);
    BigFraction count = BigFraction.of(many.getNumerator().divide(many.getDenominator()));
    if (count.signum() > 0) {
      parts.add(figure(count, sign));
    }
    return seconds.subtract(count.multiply(unit));
  }

  private String figure(BigFraction value, String unit) {
    return say.figure(Decimals.show(value)) + JOINED + unit;
  }

  /**
   * A moment, as a stopwatch shows it: {@code 1:28}.
   *
   * @param end of what is told; where it is long, hours are shown too
   */
  public String clock(BigFraction seconds, BigFraction end) {
    return say.clock(decimal(seconds), Words.withHours(decimal(end)));
  }

  private static BigDecimal decimal(BigFraction seconds) {
    return new BigDecimal(Decimals.show(seconds));
  }
}
