package io.faultwright.analysis.tolerance;

import io.faultwright.model.Build;
import io.faultwright.model.Derived;
import io.faultwright.model.DerivedValues;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Where the true values of what a situation gives can lie: around each measured value its
 * tolerance, cut off at the range of the reading. Without a tolerance, the value itself.
 */
public final class ToleranceBox {
  private final KnowledgeBase knowledge;
  private final Map<String, Interval> given = new HashMap<>();

  public ToleranceBox(KnowledgeBase knowledge, Situation situation) {
    this.knowledge = knowledge;
    new DerivedValues(knowledge)
        .withAssumed(situation)
        .readings()
        .forEach(
            (id, value) -> {
              if (value instanceof Value.Number number) {
                given.put(id, around(knowledge.readings().get(id), number.amount()));
              }
            });
  }

  private static Interval around(Reading reading, BigFraction shown) {
    Optional<BigFraction> half = reading.tolerance(shown);
    if (half.isEmpty()) {
      return Interval.point(shown);
    }
    Interval range = ((Domain.Measured) reading.domain()).range();
    BigFraction low = shown.subtract(half.get());
    BigFraction high = shown.add(half.get());
    BigFraction lowest = range.low().orElseThrow().value();
    BigFraction highest = range.high().orElseThrow().value();
    return Interval.closed(
        low.compareTo(lowest) < 0 ? lowest : low, high.compareTo(highest) > 0 ? highest : high);
  }

  /**
   * Where a reading can lie on a build; of one that is worked out from others perhaps a little more
   * than that. Empty where it is not known.
   */
  public Optional<Interval> reach(String reading, Build build) {
    Optional<Derived> derived = knowledge.readings().get(reading).derived();
    if (derived.isEmpty()) {
      return Optional.ofNullable(given.get(reading));
    }
    boolean known = derived.get().operands().stream().allMatch(id -> reach(id, build).isPresent());
    return known
        ? derived.get().range(id -> reach(id, build).orElseThrow(), build.model().refrigerant())
        : Optional.empty();
  }

  /**
   * Whether a reading that is worked out may have no value, because a curve ends within the box.
   */
  boolean mayLeaveCurves(String reading, Build build) {
    return knowledge
        .readings()
        .get(reading)
        .derived()
        .filter(form -> reach(reading, build).isPresent())
        .filter(
            form ->
                form.mayLeaveCurves(
                    id -> reach(id, build).orElseThrow(), build.model().refrigerant()))
        .isPresent();
  }

  /** Half the width in which a reading can lie. */
  public BigFraction half(String reading, Build build) {
    Interval reach = reach(reading, build).orElseThrow();
    return high(reach).subtract(low(reach)).divide(2);
  }

  static BigFraction low(Interval interval) {
    return interval.low().orElseThrow().value();
  }

  static BigFraction high(Interval interval) {
    return interval.high().orElseThrow().value();
  }

  static boolean isPoint(Interval interval) {
    return low(interval).equals(high(interval));
  }
}
