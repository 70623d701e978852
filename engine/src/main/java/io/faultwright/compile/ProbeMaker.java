package io.faultwright.compile;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Reading;
import io.faultwright.model.Truth;
import io.faultwright.model.Value;
import io.faultwright.model.Value.NotTaken;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** Turns a test into something that can be asked of a situation. */
final class ProbeMaker {
  private final KnowledgeBase base;
  private final LimitsBook limits;

  ProbeMaker(KnowledgeBase base, LimitsBook limits) {
    this.base = base;
    this.limits = limits;
  }

  Probe of(Test test) {
    return base.readings().containsKey(test.subject()) ? ofReading(test) : ofEquipment(test);
  }

  /** Whether builds have the reading of a test and, for its limits, the one they follow. */
  Predicate<Candidates> existence(Test test) {
    List<Condition> needed = new ArrayList<>();
    applies(test.subject()).ifPresent(needed::add);
    if (test.pattern() instanceof AgainstLimits) {
      limits
          .table(test.subject())
          .map(LimitsTable::drivers)
          .orElse(List.of())
          .forEach(driver -> applies(driver).ifPresent(needed::add));
    }
    return needed.isEmpty() ? builds -> true : builds -> builds.some(new Condition.All(needed));
  }

  /** The equipment that has a reading, where not all has it. */
  private Optional<Condition> applies(String subject) {
    return Optional.ofNullable(base.readings().get(subject))
        .map(Reading::applies)
        .filter(applies -> !applies.equals(Condition.ALWAYS));
  }

  private static Probe ofEquipment(Test test) {
    return facts -> facts.candidates().agree(build -> Truth.of(build.satisfies(test)));
  }

  private Probe ofReading(Test test) {
    String reading = test.subject();
    return test.pattern()
        .match(
            oneOf -> facts -> word(facts, reading, oneOf.values()),
            inInterval -> facts -> amount(facts, reading, inInterval.interval()),
            againstLimits -> facts -> side(facts, reading, againstLimits.sides()),
            cannotBeTaken -> facts -> notTaken(facts, reading));
  }

  private static Truth word(Facts facts, String reading, Set<String> values) {
    return facts.known(reading) instanceof Value.Word word
        ? Truth.of(values.contains(word.id()))
        : Truth.UNKNOWN;
  }

  private static Truth amount(Facts facts, String reading, Interval interval) {
    return facts.known(reading) instanceof Value.Number number
        ? Truth.of(interval.contains(number.amount()))
        : Truth.UNKNOWN;
  }

  private static Truth notTaken(Facts facts, String reading) {
    return facts
        .value(reading)
        .map(value -> Truth.of(value instanceof NotTaken))
        .orElse(Truth.UNKNOWN);
  }

  private Truth side(Facts facts, String reading, Set<Side> sides) {
    return facts.known(reading) instanceof Value.Number number
        ? facts.candidates().agree(build -> side(facts, reading, build, number.amount(), sides))
        : Truth.UNKNOWN;
  }

  private Truth side(Facts facts, String reading, Build build, BigFraction value, Set<Side> sides) {
    Optional<Side> found = limits.side(reading, build, value, facts.situation());
    return found.isEmpty() ? Truth.UNKNOWN : Truth.of(sides.contains(found.get()));
  }
}
