package io.faultwright.pipeline;

import io.faultwright.analysis.tolerance.ToleranceBox;
import io.faultwright.compile.LimitsBook;
import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.DerivedValues;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.pipeline.Reachable.OnBuild;
import io.faultwright.pipeline.Reachable.Point;
import io.faultwright.quantity.Interval;
import io.faultwright.run.Borderline.End;
import io.faultwright.run.Borderline.Near;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What tells a situation from another one within its tolerances. */
final class Doubts {
  private final LimitsBook limits;
  private final KnowledgeBase knowledge;
  private final ToleranceBox box;
  private final DerivedValues derived;

  Doubts(LimitsBook limits, KnowledgeBase knowledge, ToleranceBox box) {
    this.limits = limits;
    this.knowledge = knowledge;
    this.box = box;
    this.derived = new DerivedValues(knowledge);
  }

  /**
   * Another situation.
   *
   * @param near the readings that lie on another side there
   */
  record Found(Situation example, List<Near> near) {
    Found simpler(Found other) {
      return other.near.size() < near.size() ? other : this;
    }
  }

  Found of(OnBuild build, Point point) {
    Situation given = derived.complete(build.given());
    Situation other = derived.complete(point.situation());
    List<Near> near = new ArrayList<>();
    for (Test test : build.open()) {
      near(test, build.build(), given, other)
          .filter(one -> !near.contains(one))
          .ifPresent(near::add);
    }
    return new Found(point.situation(), near);
  }

  private Optional<Near> near(Test test, Build build, Situation given, Situation other) {
    Optional<BigFraction> here = amount(test.subject(), given);
    Optional<BigFraction> there = amount(test.subject(), other);
    if (here.isEmpty() || there.isEmpty()) {
      return Optional.empty();
    }
    return test.pattern() instanceof InInterval within
        ? between(within.interval(), here.get(), there.get())
            .map(end -> near(test, build, End.THRESHOLD, end, here.get()))
        : againstLimits(test, build, given, other, here.get(), there.get());
  }

  /** Empty where it is worked out and a curve ends before. */
  private static Optional<BigFraction> amount(String reading, Situation situation) {
    return situation.readings().get(reading) instanceof Value.Number number
        ? Optional.of(number.amount())
        : Optional.empty();
  }

  /** The end of an interval that has just one of two values on its inner side. */
  private static Optional<BigFraction> between(Interval interval, BigFraction a, BigFraction b) {
    return Stream.of(
            interval.low().map(end -> new Interval(Optional.of(end), Optional.empty())),
            interval.high().map(end -> new Interval(Optional.empty(), Optional.of(end))))
        .flatMap(Optional::stream)
        .filter(half -> half.contains(a) != half.contains(b))
        .map(half -> half.low().or(half::high).orElseThrow().value())
        .findFirst();
  }

  private Optional<Near> againstLimits(
      Test test,
      Build build,
      Situation given,
      Situation other,
      BigFraction here,
      BigFraction there) {
    String reading = test.subject();
    Optional<Band> band = limits.band(reading, build, given);
    Optional<Side> side = band.map(ends -> ends.side(here));
    Optional<Side> otherSide = limits.band(reading, build, other).map(ends -> ends.side(there));
    if (side.equals(otherSide)) {
      return Optional.empty();
    }
    if (side.isEmpty() || otherSide.isEmpty()) {
      return Optional.of(near(test, build, End.NO_LIMITS, here, here));
    }
    boolean upper =
        side.get() == Side.ABOVE || otherSide.get() == Side.ABOVE && side.get() != Side.BELOW;
    return (upper ? band.get().high() : band.get().low())
        .map(at -> near(test, build, upper ? End.UPPER_LIMIT : End.LOWER_LIMIT, at, here));
  }

  private Near near(Test test, Build build, End end, BigFraction at, BigFraction here) {
    return new Near(
        test.subject(),
        end,
        at,
        here.subtract(at).abs(),
        box.half(test.subject(), build),
        end == End.THRESHOLD ? new TreeMap<>() : followed(test.subject(), build));
  }

  private SortedMap<String, BigFraction> followed(String reading, Build build) {
    SortedMap<String, BigFraction> followed = new TreeMap<>();
    if (limits.followsDrivers(reading, build)) {
      for (String driver : knowledge.limits().get(reading).drivers()) {
        followed.put(driver, box.half(driver, build));
      }
    }
    followed.values().removeIf(half -> half.signum() == 0);
    return followed;
  }
}
