package io.faultwright.analysis.change;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.quantity.Unit;
import java.util.Optional;

/** Exact conversion between units of one dimension. */
final class Converted {
  private Converted() {}

  static Interval interval(Interval interval, Unit from, Unit to) {
    return new Interval(end(interval.low(), from, to), end(interval.high(), from, to));
  }

  private static Optional<End> end(Optional<End> end, Unit from, Unit to) {
    return end.map(at -> new End(from.convert(at.value(), to), at.included()));
  }
}
