package io.faultwright.analysis.change;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Texts that are equal where conditions are written with the same parts, in whatever order and
 * units.
 */
final class ConditionKey {
  private final KnowledgeBase kb;

  ConditionKey(KnowledgeBase kb) {
    this.kb = kb;
  }

  String of(Condition condition) {
    return condition.match(
        all -> joined("all", all.parts()),
        any -> joined("any", any.parts()),
        not -> "not(" + of(not.part()) + ")",
        this::test);
  }

  private String joined(String name, List<Condition> parts) {
    return parts.size() == 1
        ? of(parts.get(0))
        : parts.stream()
            .map(this::of)
            .distinct()
            .sorted()
            .collect(Collectors.joining(",", name + "(", ")"));
  }

  private String test(Test test) {
    return test.subject()
        + ":"
        + (test.pattern() instanceof InInterval in
            ? interval(test.subject(), in.interval())
            : test.pattern().toString());
  }

  /** A stretch of a quantity, whatever the unit. */
  String interval(String reading, Interval interval) {
    return interval.low().map(end -> end(reading, end)).orElse("")
        + ".."
        + interval.high().map(end -> end(reading, end)).orElse("");
  }

  private String end(String reading, End end) {
    return (end.included() ? "=" : "") + amount(reading, Optional.of(end.value()));
  }

  /** An amount of a quantity, whatever the unit. */
  String amount(String reading, Optional<BigFraction> amount) {
    Unit unit = ((Domain.Measured) kb.readings().get(reading).domain()).unit();
    return amount
        .map(value -> value.multiply(unit.scale()).add(unit.offset()).toString())
        .orElse("");
  }
}
