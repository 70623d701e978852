package io.faultwright.analysis.space;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Arithmetic on bounded intervals. */
final class Stretches {
  private Stretches() {}

  /** What two intervals share; empty where they have no value in common. */
  static Optional<Interval> intersection(Interval a, Interval b) {
    Interval both = new Interval(later(a.low(), b.low(), 1), later(a.high(), b.high(), -1));
    return Optional.of(both).filter(Stretches::holdsValue);
  }

  /** The tighter of two ends: the larger for sign 1, the smaller for sign -1. */
  private static Optional<End> later(Optional<End> a, Optional<End> b, int sign) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.isEmpty() ? b : a;
    }
    int order = a.get().value().compareTo(b.get().value()) * sign;
    if (order == 0) {
      return a.get().included() ? b : a;
    }
    return order > 0 ? a : b;
  }

  /** The smallest interval that holds both. */
  static Interval hull(Interval a, Interval b) {
    return new Interval(outer(a.low(), b.low(), -1), outer(a.high(), b.high(), 1));
  }

  /** The farther of two ends: the larger for sign 1, the smaller for sign -1. */
  private static Optional<End> outer(Optional<End> a, Optional<End> b, int sign) {
    if (a.isEmpty() || b.isEmpty()) {
      return Optional.empty();
    }
    int order = a.get().value().compareTo(b.get().value()) * sign;
    if (order == 0) {
      return a.get().included() ? a : b;
    }
    return order > 0 ? a : b;
  }

  private static boolean holdsValue(Interval interval) {
    if (interval.low().isEmpty() || interval.high().isEmpty()) {
      return true;
    }
    End low = interval.low().get();
    End high = interval.high().get();
    int order = low.value().compareTo(high.value());
    return order < 0 || order == 0 && low.included() && high.included();
  }

  /** The middle of a bounded interval. */
  static BigFraction middle(Interval interval) {
    BigFraction low = interval.low().orElseThrow().value();
    return low.add(interval.high().orElseThrow().value()).divide(2);
  }
}
