package io.faultwright.page;

import io.faultwright.model.Band;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Value;
import io.faultwright.page.LessonSheet.Scale;
import io.faultwright.quantity.Decimals;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Draws where a value lies against its limits. The limits take at least a quarter of the line, so
 * that a value far outside stands at its end.
 */
final class LessonScales {
  private static final double LENGTH = 1000;
  private static final double LEAST = 0.25;
  private static final double MARGIN = 0.08;
  private static final MathContext FOUR_DIGITS = new MathContext(4, RoundingMode.HALF_EVEN);

  private final Desk desk;

  LessonScales(Desk desk) {
    this.desk = desk;
  }

  Scale of(String reading, BigFraction amount, Band band) {
    double value = amount.doubleValue();
    double low = band.low().map(BigFraction::doubleValue).orElse(Math.min(value, high(band)));
    double high = band.high().map(BigFraction::doubleValue).orElse(Math.max(value, low));
    Line line = Line.of(low, high, value);
    return new Scale(
        band.low().map(end -> line.at(end.doubleValue())),
        band.high().map(end -> line.at(end.doubleValue())),
        line.at(value),
        band.low().map(figure -> end(reading, figure)).orElse(""),
        band.high().map(figure -> end(reading, figure)).orElse(""),
        words(reading, amount),
        verdict(band.side(amount)));
  }

  private static double high(Band band) {
    return band.high().map(BigFraction::doubleValue).orElse(Double.POSITIVE_INFINITY);
  }

  /** A limit between two rows can have any number of digits; four tell enough. */
  private String end(String reading, BigFraction amount) {
    BigDecimal exact =
        new BigDecimal(amount.getNumerator())
            .divide(new BigDecimal(amount.getDenominator()), FOUR_DIGITS);
    return words(reading, Decimals.parse(exact.toPlainString()));
  }

  private String words(String reading, BigFraction amount) {
    return desk.words().value(reading, new Value.Number(amount));
  }

  private String verdict(Side side) {
    return switch (side) {
      case BELOW -> desk.say("Below limits");
      case WITHIN -> desk.say("Within limits");
      case ABOVE -> desk.say("Above limits");
    };
  }

  /** A stretch of numbers, laid on the line. */
  private record Line(double from, double to) {
    static Line of(double low, double high, double value) {
      double least = Math.min(low, value);
      double most = Math.max(high, value);
      double room = Math.max(most - least, 1e-9) * MARGIN;
      double span = Math.max(high - low, room);
      double reach = span / LEAST;
      double from = Math.max(least - room, high - reach);
      double to = Math.min(most + room, low + reach);
      return new Line(from, Math.max(to, from + room));
    }

    int at(double number) {
      double share = (number - from) / (to - from);
      return (int) Math.round(Math.max(0.01, Math.min(0.99, share)) * LENGTH);
    }
  }
}
