package io.faultwright.model;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.quantity.Polyline;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What is read off a curve at a computed place.
 *
 * @param factor by which the curve's value is multiplied, not zero
 * @param curve the curve
 * @param argument where on the curve, in the curve's own unit
 */
public record Bend(BigFraction factor, Curve curve, Derived argument) {
  Bend times(BigFraction number) {
    return new Bend(factor.multiply(number), curve, argument);
  }

  Bend with(Function<String, Derived.Converted> operand) {
    return new Bend(factor, curve, argument.with(operand));
  }

  boolean needsRefrigerant() {
    return curve instanceof Curve.OfSaturation || argument.needsRefrigerant();
  }

  Optional<BigFraction> value(
      Function<String, Optional<BigFraction>> operand, Optional<String> refrigerant) {
    return curve
        .on(refrigerant)
        .flatMap(line -> argument.value(operand, refrigerant).flatMap(line::at))
        .map(factor::multiply);
  }

  /** Every value along the part of the curve that the argument reaches. */
  Optional<Interval> range(Function<String, Interval> ranges, Optional<String> refrigerant) {
    return curve
        .on(refrigerant)
        .flatMap(
            line -> argument.range(ranges, refrigerant).flatMap(reach -> reached(line, reach)));
  }

  private Optional<Interval> reached(Polyline line, Interval reach) {
    BigFraction from = larger(low(reach), low(line.domain()));
    BigFraction to = larger(high(reach).negate(), high(line.domain()).negate()).negate();
    if (from.compareTo(to) > 0) {
      return Optional.empty();
    }
    BigFraction one = line.at(from).orElseThrow().multiply(factor);
    BigFraction other = line.at(to).orElseThrow().multiply(factor);
    return Optional.of(
        one.compareTo(other) < 0 ? Interval.closed(one, other) : Interval.closed(other, one));
  }

  boolean mayLeave(Function<String, Interval> ranges, Optional<String> refrigerant) {
    Optional<Polyline> line = curve.on(refrigerant);
    Optional<Interval> reach = argument.range(ranges, refrigerant);
    boolean leaves =
        line.isPresent()
            && reach.isPresent()
            && !(line.get().domain().contains(low(reach.get()))
                && line.get().domain().contains(high(reach.get())));
    return leaves || argument.mayLeaveCurves(ranges, refrigerant);
  }

  private static BigFraction larger(BigFraction a, BigFraction b) {
    return a.compareTo(b) > 0 ? a : b;
  }

  private static BigFraction low(Interval interval) {
    return interval.low().map(End::value).orElseThrow();
  }

  private static BigFraction high(Interval interval) {
    return interval.high().map(End::value).orElseThrow();
  }
}
