package io.faultwright.model;

import io.faultwright.quantity.Interval;
import io.faultwright.source.Place;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.function.Function;
import java.util.stream.Stream;

/** A statement about a situation; three-valued while readings are unknown. */
public sealed interface Condition {
  /** Always true: an empty {@code when}. */
  Condition ALWAYS = new All(List.of());

  /** Dispatches on the kind of condition. */
  <T> T match(
      Function<All, T> all, Function<Any, T> any, Function<Not, T> not, Function<Test, T> test);

  /** Every test in it, in the written order. */
  default Stream<Test> tests() {
    return match(
        all -> all.parts().stream().flatMap(Condition::tests),
        any -> any.parts().stream().flatMap(Condition::tests),
        not -> not.part().tests(),
        Stream::of);
  }

  /** True where every part is true. */
  record All(List<Condition> parts) implements Condition {
    public All {
      parts = List.copyOf(parts);
    }

    @Override
    public <T> T match(
        Function<All, T> all, Function<Any, T> any, Function<Not, T> not, Function<Test, T> test) {
      return all.apply(this);
    }
  }

  /** True where at least one part is true. */
  record Any(List<Condition> parts) implements Condition {
    public Any {
      parts = List.copyOf(parts);
    }

    @Override
    public <T> T match(
        Function<All, T> all, Function<Any, T> any, Function<Not, T> not, Function<Test, T> test) {
      return any.apply(this);
    }
  }

  /** True where the part is false; unknown where the part is unknown. */
  record Not(Condition part) implements Condition {
    @Override
    public <T> T match(
        Function<All, T> all, Function<Any, T> any, Function<Not, T> not, Function<Test, T> test) {
      return not.apply(this);
    }
  }

  /**
   * One line of a {@code when}.
   *
   * @param subject id of a reading, or {@code family}, {@code model}, {@code software} or an option
   * @param pattern what it must be
   * @param place where the line stands
   */
  record Test(String subject, Pattern pattern, Place place) implements Condition {
    @Override
    public <T> T match(
        Function<All, T> all, Function<Any, T> any, Function<Not, T> not, Function<Test, T> test) {
      return test.apply(this);
    }
  }

  /** What one subject must be. */
  sealed interface Pattern {
    /** Dispatches on the kind of pattern. */
    <T> T match(
        Function<OneOf, T> oneOf,
        Function<InInterval, T> inInterval,
        Function<AgainstLimits, T> againstLimits,
        Function<CannotBeTaken, T> cannotBeTaken);
  }

  /**
   * A choice, a family, a model, an option or a software version is one of these. Patterns such as
   * {@code at least 2.10} arrive here as the published versions they pick.
   */
  record OneOf(SortedSet<String> values) implements Pattern {
    public OneOf {
      values = Sorted.set(values);
    }

    @Override
    public <T> T match(
        Function<OneOf, T> oneOf,
        Function<InInterval, T> inInterval,
        Function<AgainstLimits, T> againstLimits,
        Function<CannotBeTaken, T> cannotBeTaken) {
      return oneOf.apply(this);
    }
  }

  /** A quantity, in its reading's unit, lies in the interval. */
  record InInterval(Interval interval) implements Pattern {
    @Override
    public <T> T match(
        Function<OneOf, T> oneOf,
        Function<InInterval, T> inInterval,
        Function<AgainstLimits, T> againstLimits,
        Function<CannotBeTaken, T> cannotBeTaken) {
      return inInterval.apply(this);
    }
  }

  /** Where a quantity lies against its limits. */
  enum Side {
    BELOW,
    WITHIN,
    ABOVE
  }

  /** A quantity lies on one of these sides of its limits; {@code outside} is below or above. */
  record AgainstLimits(Set<Side> sides) implements Pattern {
    public AgainstLimits {
      sides = java.util.Collections.unmodifiableSet(EnumSet.copyOf(sides));
    }

    @Override
    public <T> T match(
        Function<OneOf, T> oneOf,
        Function<InInterval, T> inInterval,
        Function<AgainstLimits, T> againstLimits,
        Function<CannotBeTaken, T> cannotBeTaken) {
      return againstLimits.apply(this);
    }
  }

  /** The reading is known to be impossible to take; any other pattern is then unknown. */
  record CannotBeTaken() implements Pattern {
    @Override
    public <T> T match(
        Function<OneOf, T> oneOf,
        Function<InInterval, T> inInterval,
        Function<AgainstLimits, T> againstLimits,
        Function<CannotBeTaken, T> cannotBeTaken) {
      return cannotBeTaken.apply(this);
    }
  }
}
