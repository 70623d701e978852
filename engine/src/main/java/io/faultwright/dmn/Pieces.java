package io.faultwright.dmn;

import io.faultwright.analysis.space.Cut;
import io.faultwright.quantity.Interval;

/** Stretches of a quantity that was cut at the ends of intervals. */
final class Pieces {
  private Pieces() {}

  /** Whether a piece lies in an interval at whose ends the quantity was cut. */
  static boolean isIn(Interval piece, Interval interval) {
    boolean above =
        interval.low().isEmpty() || Cut.start(interval).compareTo(Cut.start(piece)) <= 0;
    boolean below = interval.high().isEmpty() || Cut.end(piece).compareTo(Cut.end(interval)) <= 0;
    return above && below;
  }
}
