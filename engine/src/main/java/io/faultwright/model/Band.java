package io.faultwright.model;

import io.faultwright.model.Condition.Side;
import java.util.Optional;
import java.util.function.BinaryOperator;
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
    if (low.filter(end -> value.compareTo(end) < 0).isPresent()) {
      return Side.BELOW;
    }
    return high.filter(end -> value.compareTo(end) > 0).isPresent() ? Side.ABOVE : Side.WITHIN;
  }

  /** Joins both ends with those of another band; an end that either lacks is absent. */
  Band join(Band other, BinaryOperator<BigFraction> ends) {
    return new Band(join(low, other.low, ends), join(high, other.high, ends));
  }

  private static Optional<BigFraction> join(
      Optional<BigFraction> a, Optional<BigFraction> b, BinaryOperator<BigFraction> ends) {
    return a.flatMap(mine -> b.map(theirs -> ends.apply(mine, theirs)));
  }
}
