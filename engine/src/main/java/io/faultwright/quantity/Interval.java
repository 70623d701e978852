package io.faultwright.quantity;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A stretch of the number line; an absent end is unbounded.
 *
 * @param low lower end
 * @param high upper end
 */
public record Interval(Optional<End> low, Optional<End> high) {
  /**
   * One end of an interval.
   *
   * @param value where it lies
   * @param included whether the value itself belongs to the interval
   */
  public record End(BigFraction value, boolean included) {}

  public static Interval closed(BigFraction low, BigFraction high) {
    return new Interval(Optional.of(new End(low, true)), Optional.of(new End(high, true)));
  }

  public static Interval point(BigFraction value) {
    return closed(value, value);
  }

  public static Interval above(BigFraction value) {
    return new Interval(Optional.of(new End(value, false)), Optional.empty());
  }

  public static Interval atLeast(BigFraction value) {
    return new Interval(Optional.of(new End(value, true)), Optional.empty());
  }

  public static Interval below(BigFraction value) {
    return new Interval(Optional.empty(), Optional.of(new End(value, false)));
  }

  public static Interval atMost(BigFraction value) {
    return new Interval(Optional.empty(), Optional.of(new End(value, true)));
  }

  public boolean contains(BigFraction value) {
    return reachesDownTo(value) && reachesUpTo(value);
  }

  private boolean reachesDownTo(BigFraction value) {
    return low.isEmpty() || isBeyond(value, low.get().value(), low.get().included());
  }

  private boolean reachesUpTo(BigFraction value) {
    return high.isEmpty() || isBeyond(high.get().value(), value, high.get().included());
  }

  private static boolean isBeyond(BigFraction value, BigFraction end, boolean included) {
    int order = Exact.compare(value, end);
    return order > 0 || order == 0 && included;
  }
}
