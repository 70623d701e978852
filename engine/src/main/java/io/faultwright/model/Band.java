package io.faultwright.model;

import io.faultwright.model.Condition.Side;
import io.faultwright.quantity.Exact;
import io.faultwright.quantity.Interval;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What counts as within limits at one point, both ends included.
 *
 * @param low lowest value within limits; absent: nothing is below
 * @param high highest value within limits; absent: nothing is above
 */
public record Band(Optional<BigFraction> low, Optional<BigFraction> high) {
  /** Where a value lies against this band. */
  public Side side(BigFraction value) {
    if (low.isPresent() && Exact.compare(value, low.get()) < 0) {
      return Side.BELOW;
    }
    return high.isPresent() && Exact.compare(value, high.get()) > 0 ? Side.ABOVE : Side.WITHIN;
  }

  /** The values on a side; absent where there are none. */
  public Optional<Interval> values(Side side) {
    return switch (side) {
      case BELOW -> low.map(Interval::below);
      case ABOVE -> high.map(Interval::above);
      case WITHIN -> Optional.of(new Interval(low.map(Band::end), high.map(Band::end)));
    };
  }

  private static Interval.End end(BigFraction value) {
    return new Interval.End(value, true);
  }
}
