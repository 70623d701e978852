package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Sequence.Lasting;
import io.faultwright.model.Sequence.Stretch;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Exact;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node.Scalar;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads how long something lasts, in seconds: {@code 40 s}, {@code 6 min}, {@code 1:30}. */
final class Durations {
  private static final Unit SECOND = Units.find("s").orElseThrow();
  private static final Pattern CLOCK = Pattern.compile("(?:(\\d{1,4}):)?(\\d{1,4}):([0-5]\\d)");
  private static final BigFraction SIXTY = BigFraction.of(60);

  private final QuantityParser quantities;
  private final Problems problems;
  private final BigFraction step;

  /**
   * @param step seconds of which every time has to be a multiple
   */
  Durations(Context context, BigFraction step) {
    this(context.quantities(), context.problems(), step);
  }

  Durations(QuantityParser quantities, Problems problems, BigFraction step) {
    this.quantities = quantities;
    this.problems = problems;
    this.step = step;
  }

  /** Whether a text begins as a number does. */
  static boolean isWritten(String text) {
    return !text.isBlank() && Character.isDigit(text.strip().charAt(0));
  }

  /** Seconds, greater than zero. */
  Optional<BigFraction> read(Scalar written) {
    return read(written.place(), written.text().strip());
  }

  Optional<BigFraction> read(Place place, String text) {
    Optional<BigFraction> seconds = moment(place, text);
    if (seconds.isPresent() && seconds.get().signum() <= 0) {
      problems.add(place, "a time is greater than zero", "write a time such as `40 s` or `6 min`");
      return Optional.empty();
    }
    return seconds;
  }

  /** Seconds after a beginning; zero too. */
  Optional<BigFraction> moment(Place place, String text) {
    return seconds(place, text).filter(one -> fits(place, one));
  }

  private Optional<BigFraction> seconds(Place place, String text) {
    Matcher clock = CLOCK.matcher(text);
    if (clock.matches()) {
      return Optional.of(clock(clock));
    }
    if (text.matches("[+-]?\\d+(\\.\\d+)?")) {
      problems.add(
          place,
          "the time " + Words.quoted(text) + " has no unit",
          "write `" + text + " s` or `" + text + " min`");
      return Optional.empty();
    }
    return quantities.number(place, text, SECOND, "a time");
  }

  private static BigFraction clock(Matcher clock) {
    BigFraction hours = number(clock.group(1));
    return hours
        .multiply(SIXTY)
        .add(number(clock.group(2)))
        .multiply(SIXTY)
        .add(number(clock.group(3)));
  }

  private static BigFraction number(String digits) {
    return digits == null ? BigFraction.ZERO : BigFraction.of(Integer.parseInt(digits));
  }

  private boolean fits(Place place, BigFraction seconds) {
    if (!Exact.isWhole(seconds.divide(step))) {
      problems.add(
          place,
          "a time of "
              + Decimals.show(seconds)
              + " s is no multiple of the step of "
              + Decimals.show(step)
              + " s",
          "write a multiple of the step, or a smaller `step:` for the sequence");
      return false;
    }
    return true;
  }

  /** From one time to another. */
  Optional<Stretch> stretch(Scalar written) {
    Optional<Interval> interval =
        quantities.stretch(written.place(), written.text(), SECOND, "a time");
    return interval
        .map(one -> new Stretch(low(one), high(one)))
        .filter(one -> fits(written.place(), one.low()) && fits(written.place(), one.high()));
  }

  private static BigFraction low(Interval interval) {
    return interval.low().orElseThrow().value();
  }

  private static BigFraction high(Interval interval) {
    return interval.high().orElseThrow().value();
  }

  /** A time written as such, or the name of one. */
  Optional<Lasting> lasting(Scalar written, SequenceNames times) {
    return lasting(written, written.text().strip(), times);
  }

  /** As above, where it is a part of the text. */
  Optional<Lasting> lasting(Scalar written, String text, SequenceNames times) {
    Place place = written.place();
    if (isWritten(text)) {
      return read(place, text)
          .map(seconds -> new Lasting(place, Optional.of(seconds), Optional.empty()));
    }
    String name = times.reference(written, text);
    return Optional.of(new Lasting(place, Optional.empty(), Optional.of(name)));
  }
}
