package io.faultwright.analysis.space;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Polyline;
import io.faultwright.quantity.Polyline.Knot;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Two parallel lines with a part of a curve between them.
 *
 * @param slope of both
 * @param between the height of the curve over the line of that slope through the origin
 */
record Strip(BigFraction slope, Interval between) {
  /** The narrowest strip along the chord of the part; the part has both its ends on the curve. */
  static Strip around(Polyline curve, Interval part) {
    BigFraction from = part.low().orElseThrow().value();
    BigFraction to = part.high().orElseThrow().value();
    BigFraction start = curve.at(from).orElseThrow();
    BigFraction slope =
        from.compareTo(to) == 0
            ? BigFraction.ZERO
            : curve.at(to).orElseThrow().subtract(start).divide(to.subtract(from));
    BigFraction lowest = start.subtract(slope.multiply(from));
    BigFraction highest = lowest;
    for (int i = curve.segment(from) + 1; i < curve.knots().size(); i++) {
      Knot knot = curve.knots().get(i);
      if (knot.x().compareTo(to) >= 0) {
        break;
      }
      BigFraction height = knot.y().subtract(slope.multiply(knot.x()));
      lowest = height.compareTo(lowest) < 0 ? height : lowest;
      highest = height.compareTo(highest) > 0 ? height : highest;
    }
    return new Strip(slope, Interval.closed(lowest, highest));
  }
}
