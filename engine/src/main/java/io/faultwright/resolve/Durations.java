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
import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads how long something lasts, in seconds: {@code 40 s}, {@code 6 min}, {@code 1:30}. */
final class Durations {
  private static final Unit SECOND = Units.find("s").orElseThrow();
  private static final Pattern CLOCK = Pattern.compile("(?:(\\d{1,4}):)?(\\d{1,4}):([0-5]\\d)");
  private static final BigFraction SIXTY = BigFraction.of(60);

  /** So many steps can be added up without end; at a step of 1 s they are 31,000 years. */
  private static final long MOST_STEPS = 1_000_000_000_000L;

  /** For so many steps a course of events, or the log of a case, is told; at 1 s they are 277 h. */
  private static final long MOST_TOLD = 1_000_000;

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
    return moment(place, text).filter(one -> isPositive(place, one));
  }

  private boolean isPositive(Place place, BigFraction seconds) {
    if (seconds.signum() <= 0) {
      problems.add(place, "a time is greater than zero", "write a time such as `40 s` or `6 min`");
    }
    return seconds.signum() > 0;
  }

  /** Seconds, greater than zero, for which a sequence is run. */
  Optional<BigFraction> told(Scalar written) {
    return read(written).filter(one -> isWithin(written.place(), one, MOST_TOLD));
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
    if (text.matches("\\d+:.*")) {
      problems.add(
          place,
          "expected a time, found " + Words.quoted(text),
          "write minutes and seconds as in `1:28`, hours too as in `1:02:03`, or `88 s`");
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
    return isWithin(place, seconds, MOST_STEPS);
  }

  private boolean isWithin(Place place, BigFraction seconds, long steps) {
    BigFraction most = step.multiply(BigInteger.valueOf(steps));
    if (Exact.compare(seconds, most) > 0) {
      problems.add(
          place,
          "a time of " + Decimals.show(seconds) + " s is too long",
          "it is at most " + Decimals.show(most) + " s here, " + steps + " steps");
      return false;
    }
    return true;
  }

  /** From one time to another. */
  Optional<Stretch> stretch(Scalar written) {
    if (written.text().strip().matches(".*\\d")) {
      problems.add(
          written.place(),
          "the times " + Words.quoted(written.text().strip()) + " have no unit",
          "write `" + written.text().strip() + " s` or `" + written.text().strip() + " min`");
      return Optional.empty();
    }
    Optional<Interval> interval =
        quantities.stretch(written.place(), written.text(), SECOND, "a time");
    return interval
        .map(one -> new Stretch(low(one), high(one)))
        .filter(one -> isPositive(written.place(), one.low()))
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
