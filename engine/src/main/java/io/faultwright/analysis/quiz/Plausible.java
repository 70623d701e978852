package io.faultwright.analysis.quiz;

import io.faultwright.model.Band;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Domain;
import io.faultwright.quantity.Exact;
import io.faultwright.quantity.Interval;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Figures that a person would expect to read: near the limits and thresholds that matter, on the
 * steps of the display, and not at the ends of what the instrument can show.
 *
 * @param low smallest figure
 * @param high largest figure
 * @param step between two figures
 */
record Plausible(BigFraction low, BigFraction high, BigFraction step) {
  /**
   * A choice of ours, without a source: how far a wrong reading lies beyond its limits, at most.
   */
  private static final BigFraction BEYOND = BigFraction.of(5, 4);

  /** How much of a stretch that only ends with the range is used. */
  private static final BigFraction NEAR = BigFraction.of(1, 5);

  private static final BigFraction QUARTER = BigFraction.of(1, 4);

  /**
   * The figures of a reading.
   *
   * @param stretch in which it has to lie
   * @param band its limits, where there are some
   * @param side of the limits on which it has to lie
   */
  static Plausible of(
      Domain.Measured domain, Interval stretch, Optional<Band> band, Optional<Side> side) {
    BigFraction low = low(domain.range());
    BigFraction high = high(domain.range());
    BigFraction from = low(stretch);
    BigFraction to = high(stretch);
    boolean opensDown = from.compareTo(low) <= 0;
    boolean opensUp = to.compareTo(high) >= 0;
    if (band.isPresent() && side.isPresent()) {
      Ends ends = Ends.of(band.get(), side.get(), from, to);
      return steps(domain, max(from, ends.low), min(to, ends.high));
    }
    BigFraction width = to.subtract(from);
    if (opensDown && opensUp) {
      return steps(domain, from.add(width.multiply(QUARTER)), to.subtract(width.multiply(QUARTER)));
    }
    if (opensUp) {
      return steps(domain, from, from.add(width.multiply(NEAR)));
    }
    return opensDown
        ? steps(domain, to.subtract(width.multiply(NEAR)), to)
        : steps(domain, from, to);
  }

  /** Where figures on one side of limits begin and end. */
  private record Ends(BigFraction low, BigFraction high) {
    static Ends of(Band band, Side side, BigFraction from, BigFraction to) {
      BigFraction low = band.low().orElse(from);
      BigFraction high = band.high().orElse(to);
      BigFraction reach =
          band.low().isPresent() && band.high().isPresent()
              ? high.subtract(low).multiply(BEYOND)
              : high.subtract(low).multiply(NEAR);
      return switch (side) {
        case BELOW -> new Ends(low.subtract(reach), low);
        case ABOVE -> new Ends(high, high.add(reach));
        case WITHIN -> within(band, low, high, reach);
      };
    }

    private static Ends within(Band band, BigFraction low, BigFraction high, BigFraction reach) {
      if (band.low().isEmpty()) {
        return new Ends(high.subtract(reach), high);
      }
      return band.high().isEmpty() ? new Ends(low, low.add(reach)) : new Ends(low, high);
    }
  }

  private static Plausible steps(Domain.Measured domain, BigFraction low, BigFraction high) {
    return new Plausible(low, high, domain.resolution().orElseGet(() -> round(low, high)));
  }

  /** A power of ten of which some dozens lie between two figures. */
  private static BigFraction round(BigFraction low, BigFraction high) {
    BigFraction most = high.subtract(low).divide(20);
    BigFraction step = BigFraction.of(1000);
    while (step.compareTo(most) > 0 && step.doubleValue() > 1e-6) {
      step = step.divide(10);
    }
    return step;
  }

  /** One of the figures; empty where no step of the display lies among them. */
  Optional<BigFraction> draw(Dice dice) {
    long first = Exact.floor(low.divide(step).negate()).negate().longValueExact();
    long last = Exact.floor(high.divide(step)).longValueExact();
    return last < first
        ? Optional.empty()
        : Optional.of(step.multiply(BigFraction.of(first + dice.below(last - first + 1))));
  }

  /** The same steps over a whole range. */
  Plausible over(Interval range) {
    return new Plausible(low(range), high(range), step);
  }

  /** How far a figure lies from the nearest plausible one. */
  BigFraction away(BigFraction figure) {
    return max(max(low.subtract(figure), figure.subtract(high)), BigFraction.ZERO);
  }

  private static BigFraction low(Interval interval) {
    return interval.low().orElseThrow().value();
  }

  private static BigFraction high(Interval interval) {
    return interval.high().orElseThrow().value();
  }

  private static BigFraction max(BigFraction a, BigFraction b) {
    return a.compareTo(b) >= 0 ? a : b;
  }

  private static BigFraction min(BigFraction a, BigFraction b) {
    return a.compareTo(b) <= 0 ? a : b;
  }
}
