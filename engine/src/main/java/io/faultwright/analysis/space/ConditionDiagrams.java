package io.faultwright.analysis.space;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.quantity.Interval;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntBinaryOperator;
import java.util.function.Predicate;

/** Conditions as diagrams, by strong three-valued logic (Kleene, 1938). */
final class ConditionDiagrams {
  private final Space space;
  private final Diagrams diagrams;

  ConditionDiagrams(Space space) {
    this.space = space;
    this.diagrams = space.diagrams();
  }

  Truth truth(Condition condition) {
    return condition.match(
        all ->
            new Truth(
                fold(all.parts(), Truth::isTrue, Diagrams.ALL, diagrams::and),
                fold(all.parts(), Truth::isFalse, Diagrams.NONE, diagrams::or)),
        any ->
            new Truth(
                fold(any.parts(), Truth::isTrue, Diagrams.NONE, diagrams::or),
                fold(any.parts(), Truth::isFalse, Diagrams.ALL, diagrams::and)),
        not -> swapped(truth(not.part())),
        this::test);
  }

  private int fold(
      List<Condition> parts, Function<Truth, Integer> side, int start, IntBinaryOperator join) {
    return parts.stream().map(this::truth).map(side).reduce(start, join::applyAsInt);
  }

  private static Truth swapped(Truth truth) {
    return new Truth(truth.isFalse(), truth.isTrue());
  }

  private Truth test(Condition.Test test) {
    if (!space.knowledge().readings().containsKey(test.subject())) {
      return onEquipment(test);
    }
    return test.pattern()
        .match(
            oneOf -> onWord(test.subject(), oneOf),
            inInterval -> onAmount(test.subject(), inInterval),
            againstLimits -> onSide(test.subject(), againstLimits),
            cannotBeTaken -> onTaking(test.subject()));
  }

  private Truth onEquipment(Condition.Test test) {
    return split(
        new Axis.OfEquipment(),
        cell -> true,
        cell ->
            cell instanceof Cell.Builds builds
                && EquipmentTruth.holds(test, builds.representative()));
  }

  private Truth onWord(String reading, OneOf oneOf) {
    return split(
        new Axis.OfReading(reading),
        cell -> cell instanceof Cell.Word,
        cell -> cell instanceof Cell.Word word && oneOf.values().contains(word.value()));
  }

  private Truth onAmount(String reading, InInterval inInterval) {
    return split(
        new Axis.OfReading(reading),
        cell -> cell instanceof Cell.Stretch,
        cell -> cell instanceof Cell.Stretch stretch && holds(inInterval.interval(), stretch));
  }

  /** Whether the stretch lies inside; no condition's end lies within a stretch. */
  private static boolean holds(Interval interval, Cell.Stretch stretch) {
    return Stretches.intersection(interval, stretch.interval()).isPresent();
  }

  private Truth onSide(String reading, AgainstLimits againstLimits) {
    return split(
        new Axis.OfSide(reading),
        cell -> cell instanceof Cell.SideOf,
        cell -> cell instanceof Cell.SideOf at && againstLimits.sides().contains(at.side()));
  }

  private Truth onTaking(String reading) {
    return split(
        new Axis.OfReading(reading),
        cell -> !(cell instanceof Cell.Absent),
        cell -> cell instanceof Cell.NotTaken);
  }

  /** True on the known cells that satisfy the predicate, false on the other known ones. */
  private Truth split(Axis.Subject subject, Predicate<Cell> known, Predicate<Cell> satisfied) {
    Axis axis = space.axis(subject);
    return new Truth(
        space.literal(subject, axis.where(known.and(satisfied))),
        space.literal(subject, axis.where(known.and(satisfied.negate()))));
  }
}
