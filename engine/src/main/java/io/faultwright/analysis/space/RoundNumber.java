package io.faultwright.analysis.space;

import io.faultwright.quantity.Exact;
import io.faultwright.quantity.Interval;
import java.math.BigInteger;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Picks the value of an interval that a person would write. */
final class RoundNumber {
  private static final BigFraction LARGEST_STEP = BigFraction.of(1000);
  private static final BigFraction[] SHRINK = {
    BigFraction.of(1, 2), BigFraction.of(2, 5), BigFraction.of(1, 2)
  };

  private RoundNumber() {}

  /**
   * A multiple of the largest step of 1, 2 or 5 times a power of ten that has one inside, nearest
   * to the middle; the middle itself where not even the resolution's steps reach inside, the only
   * value of a point.
   */
  static BigFraction in(Interval interval, Optional<BigFraction> resolution) {
    BigFraction middle = Stretches.middle(interval);
    if (interval.low().equals(interval.high())) {
      return middle;
    }
    Optional<BigFraction> onGrid = resolution.flatMap(step -> onSteps(interval, step));
    return onGrid.orElseGet(() -> round(interval, middle));
  }

  /** A round value of any interval that holds one, also of an unbounded one. */
  static BigFraction anywhere(Interval interval) {
    if (interval.low().isPresent() && interval.high().isPresent()) {
      return in(interval, Optional.empty());
    }
    return interval
        .low()
        .map(end -> end.value().add(BigFraction.ONE))
        .or(() -> interval.high().map(end -> end.value().subtract(BigFraction.ONE)))
        .orElse(BigFraction.ZERO);
  }

  /** The roundest value among the multiples of the resolution. */
  private static Optional<BigFraction> onSteps(Interval interval, BigFraction resolution) {
    BigFraction step = LARGEST_STEP;
    for (int i = 0; step.compareTo(resolution) > 0; i++) {
      boolean onGrid = Exact.isWhole(step.divide(resolution));
      Optional<BigFraction> found = onGrid ? multiple(interval, step) : Optional.empty();
      if (found.isPresent()) {
        return found;
      }
      step = step.multiply(SHRINK[i % SHRINK.length]);
    }
    return multiple(interval, resolution);
  }

  private static BigFraction round(Interval interval, BigFraction middle) {
    BigFraction step = LARGEST_STEP;
    for (int i = 0; i < 60; i++) {
      Optional<BigFraction> found = multiple(interval, step);
      if (found.isPresent()) {
        return found.get();
      }
      step = step.multiply(SHRINK[i % SHRINK.length]);
    }
    return middle;
  }

  /** The multiple of a step nearest to the middle of the interval, where it lies inside. */
  private static Optional<BigFraction> multiple(Interval interval, BigFraction step) {
    BigFraction middle = Stretches.middle(interval);
    BigInteger below = Exact.floor(middle.divide(step));
    BigFraction low = step.multiply(BigFraction.of(below));
    BigFraction high = low.add(step);
    boolean lowNearer = middle.subtract(low).compareTo(high.subtract(middle)) <= 0;
    BigFraction first = lowNearer ? low : high;
    BigFraction second = lowNearer ? high : low;
    return interval.contains(first)
        ? Optional.of(first)
        : Optional.of(second).filter(interval::contains);
  }
}
