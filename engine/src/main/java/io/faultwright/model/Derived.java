package io.faultwright.model;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.quantity.Unit;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How a reading is computed from other measured readings: a linear form over their values.
 *
 * @param terms operand id to its factor, in the units of both readings; at least one, none zero
 * @param constant what is added to the sum
 */
public record Derived(SortedMap<String, BigFraction> terms, BigFraction constant) {
  public Derived {
    terms = Sorted.copy(terms);
    if (terms.isEmpty() || terms.values().stream().anyMatch(factor -> factor.signum() == 0)) {
      throw new IllegalArgumentException("a derived reading needs operands that matter: " + terms);
    }
  }

  /** The first minus the second, in the first one's unit of differences; one dimension. */
  public static Derived difference(Reading first, Reading second) {
    Unit unit = ((Domain.Measured) first.domain()).unit();
    Unit other = ((Domain.Measured) second.domain()).unit();
    BigFraction zero = other.convert(BigFraction.ZERO, unit);
    BigFraction one = other.convert(BigFraction.ONE, unit).subtract(zero);
    return new Derived(
        new TreeMap<>(Map.of(first.id(), BigFraction.ONE, second.id(), one.negate())),
        zero.negate());
  }

  /** The same value as another reading. */
  public static Derived same(String reading) {
    return new Derived(new TreeMap<>(Map.of(reading, BigFraction.ONE)), BigFraction.ZERO);
  }

  /** Whether it is just the value of one other reading. */
  public boolean isSame() {
    return constant.signum() == 0
        && terms.size() == 1
        && terms.values().iterator().next().compareTo(BigFraction.ONE) == 0;
  }

  /** The value, once every operand's value is known. */
  public Optional<BigFraction> value(Function<String, Optional<BigFraction>> operand) {
    BigFraction sum = constant;
    for (Map.Entry<String, BigFraction> term : terms.entrySet()) {
      Optional<BigFraction> known = operand.apply(term.getKey());
      if (known.isEmpty()) {
        return Optional.empty();
      }
      sum = sum.add(term.getValue().multiply(known.get()));
    }
    return Optional.of(sum);
  }

  /**
   * Every value it can take while each operand lies in its range, exactly.
   *
   * @param readings measured readings, the operands among them
   */
  public Interval range(Map<String, Reading> readings) {
    return Interval.closed(extreme(readings, 1), extreme(readings, -1));
  }

  /** The lowest value for sign 1, the highest for sign -1. */
  private BigFraction extreme(Map<String, Reading> readings, int sign) {
    return value(
            id -> {
              Interval range = ((Domain.Measured) readings.get(id).domain()).range();
              boolean low = terms.get(id).signum() == sign;
              return (low ? range.low() : range.high()).map(End::value);
            })
        .orElseThrow();
  }

  /** The equipment on which every operand exists. */
  public Condition applies(Map<String, Reading> readings) {
    return new Condition.All(
        terms.keySet().stream()
            .map(id -> readings.get(id).applies())
            .filter(applies -> !applies.equals(Condition.ALWAYS))
            .toList());
  }
}
