package io.faultwright.compile;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Pattern;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The text by which Drools tells constraints apart: equal exactly where conditions mean the same up
 * to the order and repetition of their parts. Drools silently merges two predicates of one text.
 */
final class Canonical {
  private Canonical() {}

  static String of(Condition condition) {
    return condition.match(
        all -> "all" + parts(all.parts()),
        any -> "any" + parts(any.parts()),
        not -> "not(" + of(not.part()) + ")",
        test -> quote(test.subject()) + " " + of(test.pattern()));
  }

  private static String parts(List<Condition> parts) {
    return parts.stream()
        .map(Canonical::of)
        .distinct()
        .sorted()
        .collect(Collectors.joining(",", "(", ")"));
  }

  private static String of(Pattern pattern) {
    return pattern.match(
        oneOf -> "in " + values(oneOf.values()),
        inInterval -> "from " + of(inInterval.interval()),
        againstLimits -> "limits " + againstLimits.sides(),
        cannotBeTaken -> "cannot be taken");
  }

  private static String values(Collection<String> values) {
    return values.stream().map(Canonical::quote).collect(Collectors.joining(","));
  }

  private static String of(Interval interval) {
    return end(interval.low()) + " to " + end(interval.high());
  }

  private static String end(Optional<End> end) {
    return end.map(at -> at.value() + (at.included() ? " included" : "")).orElse("open");
  }

  /** Length first, so that no text can be read in two ways. */
  private static String quote(String text) {
    return text.length() + ":" + text;
  }
}
