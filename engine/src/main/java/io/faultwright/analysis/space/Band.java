package io.faultwright.analysis.space;

import io.faultwright.model.Condition.Side;
import io.faultwright.quantity.Interval;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Limits at one place.
 *
 * @param low lowest value within, in the reading's unit; absent: nothing is below
 * @param high highest value within, in the reading's unit; absent: nothing is above
 */
record Band(Optional<BigFraction> low, Optional<BigFraction> high) {
  /** The values on a side of the limits; empty where there are none. */
  Optional<Interval> values(Side side) {
    return switch (side) {
      case BELOW -> low.map(Interval::below);
      case ABOVE -> high.map(Interval::above);
      case WITHIN ->
          Optional.of(
              new Interval(
                  low.map(value -> new Interval.End(value, true)),
                  high.map(value -> new Interval.End(value, true))));
    };
  }
}
