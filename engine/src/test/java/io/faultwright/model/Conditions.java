package io.faultwright.model;

import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.All;
import io.faultwright.model.Condition.Any;
import io.faultwright.model.Condition.CannotBeTaken;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.Not;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Pattern;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Condition.Test;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.source.Place;
import java.util.EnumSet;
import java.util.List;

/** Conditions in few words, for tests. */
public final class Conditions {
  public static final Place NOWHERE = new Place("test.yaml", 1, 1, 1);

  private Conditions() {}

  public static Condition all(Condition... parts) {
    return new All(List.of(parts));
  }

  public static Condition any(Condition... parts) {
    return new Any(List.of(parts));
  }

  public static Condition not(Condition part) {
    return new Not(part);
  }

  public static Condition is(String subject, String... values) {
    return test(subject, new OneOf(Sorted.set(List.of(values))));
  }

  public static Condition above(String reading, String value) {
    return in(reading, Interval.above(Decimals.parse(value)));
  }

  public static Condition atLeast(String reading, String value) {
    return in(reading, Interval.atLeast(Decimals.parse(value)));
  }

  public static Condition below(String reading, String value) {
    return in(reading, Interval.below(Decimals.parse(value)));
  }

  public static Condition atMost(String reading, String value) {
    return in(reading, Interval.atMost(Decimals.parse(value)));
  }

  public static Condition between(String reading, String low, String high) {
    return in(reading, Interval.closed(Decimals.parse(low), Decimals.parse(high)));
  }

  public static Condition in(String reading, Interval interval) {
    return test(reading, new InInterval(interval));
  }

  public static Condition limits(String reading, Side first, Side... more) {
    return test(reading, new AgainstLimits(EnumSet.of(first, more)));
  }

  public static Condition notTaken(String reading) {
    return test(reading, new CannotBeTaken());
  }

  private static Condition test(String subject, Pattern pattern) {
    return new Test(subject, pattern, NOWHERE);
  }
}
