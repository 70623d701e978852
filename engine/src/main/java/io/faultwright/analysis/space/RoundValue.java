package io.faultwright.analysis.space;

import io.faultwright.quantity.Interval;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Picks a round value that a form has in some solution of a system. */
final class RoundValue {
  private static final int MOST_TRIES = 12;

  private RoundValue() {}

  /** The roundest value found; the system has to be solvable. */
  static BigFraction of(CurvedSystem system, LinearForm form, Optional<BigFraction> resolution) {
    Interval reach = system.image(form).orElseThrow();
    BigFraction round = RoundNumber.in(reach, resolution);
    if (system.readings().isEmpty() || fits(system, form, round)) {
      return round;
    }
    BigFraction sure = form.at(system.solution().orElseThrow());
    BigFraction width =
        reach.high().orElseThrow().value().subtract(reach.low().orElseThrow().value());
    for (int tries = 0; tries < MOST_TRIES; tries++) {
      width = width.divide(2);
      Interval near = Interval.closed(sure.subtract(width), sure.add(width));
      BigFraction value = RoundNumber.in(near, resolution);
      if (fits(system, form, value)) {
        return value;
      }
    }
    return sure;
  }

  private static boolean fits(CurvedSystem system, LinearForm form, BigFraction value) {
    return system.with(form, Interval.point(value)).isSolvable();
  }
}
