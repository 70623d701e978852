package io.faultwright.analysis.quiz;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Condition.Test;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** The contrary of a test, said without {@code not} where that can be. */
final class Opposite {
  private Opposite() {}

  static Condition of(Test test) {
    if (test.pattern() instanceof InInterval within) {
      return beyond(within.interval())
          .<Condition>map(other -> new Test(test.subject(), new InInterval(other), test.place()))
          .orElseGet(() -> new Condition.Not(test));
    }
    if (test.pattern() instanceof AgainstLimits limits && limits.sides().size() < 3) {
      Set<Side> others = EnumSet.complementOf(EnumSet.copyOf(limits.sides()));
      return new Test(test.subject(), new AgainstLimits(others), test.place());
    }
    return new Condition.Not(test);
  }

  /** What lies beyond the only end of an interval. */
  private static Optional<Interval> beyond(Interval interval) {
    if (interval.low().isPresent() == interval.high().isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        new Interval(interval.high().map(Opposite::end), interval.low().map(Opposite::end)));
  }

  private static End end(End end) {
    return new End(end.value(), !end.included());
  }
}
