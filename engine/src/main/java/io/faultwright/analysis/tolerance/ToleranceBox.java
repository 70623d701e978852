package io.faultwright.analysis.tolerance;

import io.faultwright.model.Derived;
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
    situation
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
   * Where a reading can lie; of one that is worked out from others perhaps a little more than that.
   * Empty where it is not known.
   */
  public Optional<Interval> reach(String reading) {
    Optional<Derived> derived = knowledge.readings().get(reading).derived();
    return derived.isEmpty()
        ? Optional.ofNullable(given.get(reading))
        : end(derived.get(), 1)
            .flatMap(low -> end(derived.get(), -1).map(high -> Interval.closed(low, high)));
  }

  /** The lowest value for sign 1, the highest for sign -1. */
  private Optional<BigFraction> end(Derived derived, int sign) {
    return derived.value(
        id -> reach(id).map(at -> derived.terms().get(id).signum() == sign ? low(at) : high(at)));
  }

  /** Half the width in which a reading can lie. */
  public BigFraction half(String reading) {
    Interval reach = reach(reading).orElseThrow();
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
