package io.faultwright.analysis.space;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Polyline;
import io.faultwright.quantity.Polyline.Knot;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
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
    List<BigFraction> heights =
        Stream.concat(
                Stream.of(new Knot(from, start)),
                curve.knots().subList(curve.segment(from) + 1, curve.segment(to) + 1).stream())
            .map(knot -> knot.y().subtract(slope.multiply(knot.x())))
            .toList();
    return new Strip(slope, Interval.closed(Collections.min(heights), Collections.max(heights)));
  }
}
