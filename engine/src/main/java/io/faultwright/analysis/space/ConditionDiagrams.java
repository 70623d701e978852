package io.faultwright.analysis.space;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.quantity.Interval;
import java.util.BitSet;
import java.util.List;
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
        all -> folded(all.parts(), Diagrams.ALL, diagrams::and, diagrams::or),
        any -> folded(any.parts(), Diagrams.NONE, diagrams::or, diagrams::and),
        not -> truth(not.part()).negated(),
        this::test);
  }

  /** Joins parts one way where they are true and the other way where they are false. */
  private Truth folded(
      List<Condition> parts, int start, IntBinaryOperator join, IntBinaryOperator opposite) {
    int other = diagrams.not(start);
    Truth result = new Truth(start, other, start, other);
    for (Condition condition : parts) {
      Truth part = truth(condition);
      result =
          new Truth(
              join.applyAsInt(result.isTrue(), part.isTrue()),
              opposite.applyAsInt(result.isFalse(), part.isFalse()),
              join.applyAsInt(result.mayBeTrue(), part.mayBeTrue()),
              opposite.applyAsInt(result.mayBeFalse(), part.mayBeFalse()));
    }
    return result;
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
        cell -> cell instanceof Cell.Builds builds && builds.representative().satisfies(test));
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
    BitSet isTrue = axis.where(known.and(satisfied));
    BitSet isFalse = axis.where(known.and(satisfied.negate()));
    BitSet open = axis.where(known.negate().and(cell -> !(cell instanceof Cell.Absent)));
    return new Truth(
        space.literal(subject, isTrue),
        space.literal(subject, isFalse),
        space.literal(subject, union(isTrue, open)),
        space.literal(subject, union(isFalse, open)));
  }

  private static BitSet union(BitSet a, BitSet b) {
    BitSet both = (BitSet) a.clone();
    both.or(b);
    return both;
  }
}
