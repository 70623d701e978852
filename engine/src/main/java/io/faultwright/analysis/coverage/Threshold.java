package io.faultwright.analysis.coverage;

import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Domain;
import io.faultwright.model.Reading;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A value at which a condition changes.
 *
 * @param value in the reading's unit
 * @param above whether the value itself belongs to what is above it
 */
public record Threshold(BigFraction value, boolean above) {
  private static final int STEPS_OF_A_RANGE = 100;

  /** The thresholds of a stretch. */
  public static List<Threshold> of(InInterval pattern) {
    List<Threshold> found = new ArrayList<>();
    Interval interval = pattern.interval();
    interval.low().ifPresent(end -> found.add(new Threshold(end.value(), end.included())));
    interval.high().ifPresent(end -> found.add(new Threshold(end.value(), !end.included())));
    return found;
  }

  /** Where a value lies beside a threshold. */
  public enum Side {
    BELOW,
    AT,
    ABOVE
  }

  /**
   * The values within one step on a side. Two sides are the two-value boundaries of ISO/IEC/IEEE
   * 29119-4: the last value on either side; with {@link Side#AT} they are its three values.
   *
   * @param step distance of neighbouring values
   * @param three whether the threshold itself is a side of its own
   */
  public Interval side(Side side, BigFraction step, boolean three) {
    BigFraction low = value.subtract(step);
    BigFraction high = value.add(step);
    return switch (side) {
      case BELOW -> stretch(low, three || above, value, !three && !above);
      case AT -> Interval.point(value);
      case ABOVE -> stretch(value, !three && above, high, three || !above);
    };
  }

  /** The sides that there are. */
  public static List<Side> sides(boolean three) {
    return three ? List.of(Side.values()) : List.of(Side.BELOW, Side.ABOVE);
  }

  private static Interval stretch(
      BigFraction low, boolean lowIncluded, BigFraction high, boolean highIncluded) {
    return new Interval(
        Optional.of(new End(low, lowIncluded)), Optional.of(new End(high, highIncluded)));
  }

  /**
   * The smallest step in which a reading is read: its resolution, or else the power of ten that
   * parts its range into about a hundred.
   */
  public static BigFraction step(Reading reading) {
    Domain.Measured measured = (Domain.Measured) reading.domain();
    return measured.resolution().orElseGet(() -> step(measured.range()));
  }

  private static BigFraction step(Interval range) {
    BigFraction width =
        range.high().orElseThrow().value().subtract(range.low().orElseThrow().value());
    BigFraction step = BigFraction.ONE;
    while (step.multiply(STEPS_OF_A_RANGE).compareTo(width) > 0) {
      step = step.divide(10);
    }
    while (step.multiply(10 * STEPS_OF_A_RANGE).compareTo(width) <= 0) {
      step = step.multiply(10);
    }
    return step;
  }
}
