package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.CannotBeTaken;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Pattern;
import io.faultwright.model.Condition.Test;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Reads what stands behind a subject in a condition: one pattern, or a list of them. */
final class PatternResolver {
  static final String CANNOT_BE_TAKEN = "cannot be taken";
  private static final String NOT = "not ";

  private final NamedPatterns named;
  private final VersionPatterns versions;
  private final QuantityPatterns quantities;
  private final Problems problems;

  PatternResolver(Context context) {
    this.problems = context.problems();
    this.named = new NamedPatterns(problems);
    this.versions = new VersionPatterns(problems);
    this.quantities = new QuantityPatterns(context.quantities(), problems);
  }

  /** The condition that the subject is as written; empty where that is not understood. */
  Optional<Condition> condition(Subject subject, Node written, Place place) {
    if (written instanceof ListNode list) {
      return anyOf(subject, list, place);
    }
    if (written instanceof Scalar scalar && !scalar.text().isBlank()) {
      return single(subject, scalar, place);
    }
    problems.add(
        written.place(),
        Words.quoted(subject.id()) + " takes a value or a list of values, found " + written.kind(),
        "write `" + subject.id() + ": value` or `" + subject.id() + ": [one, two]`");
    return Optional.empty();
  }

  private Optional<Condition> anyOf(Subject subject, ListNode list, Place place) {
    if (list.items().isEmpty()) {
      problems.add(list.place(), "the list is empty", "write at least one value");
    }
    List<Condition> parts = new ArrayList<>();
    for (Node item : list.items()) {
      if (item instanceof Scalar scalar && !scalar.text().isBlank()) {
        single(subject, scalar, place).ifPresent(parts::add);
      } else {
        problems.add(
            item.place(), "a list of values has texts only, found " + item.kind(), "write a value");
      }
    }
    return Optional.of(parts)
        .filter(some -> !some.isEmpty())
        .map(some -> merged(subject, some, place));
  }

  private static Condition merged(Subject subject, List<Condition> parts, Place place) {
    TreeSet<String> values = new TreeSet<>();
    for (Condition part : parts) {
      if (!(part instanceof Test test && test.pattern() instanceof OneOf oneOf)) {
        return parts.size() == 1 ? part : new Condition.Any(parts);
      }
      values.addAll(oneOf.values());
    }
    return new Test(subject.id(), new OneOf(values), place);
  }

  private Optional<Condition> single(Subject subject, Scalar scalar, Place place) {
    String text = Words.oneLine(scalar.text());
    if (text.startsWith(NOT)) {
      return pattern(subject, scalar.place(), text.substring(NOT.length()))
          .map(pattern -> new Condition.Not(new Test(subject.id(), pattern, place)));
    }
    return pattern(subject, scalar.place(), text)
        .map(pattern -> new Test(subject.id(), pattern, place));
  }

  private Optional<Pattern> pattern(Subject subject, Place place, String text) {
    if (text.equals(CANNOT_BE_TAKEN)) {
      return cannotBeTaken(subject, place);
    }
    return subject.match(
        choice -> named.read(place, text, choice).map(Pattern.class::cast),
        software -> versions.read(place, text, software).map(Pattern.class::cast),
        quantity -> quantities.read(place, text, quantity));
  }

  private Optional<Pattern> cannotBeTaken(Subject subject, Place place) {
    if (!subject.reading()) {
      problems.add(
          place,
          "`cannot be taken` fits readings only, and " + Words.quoted(subject.id()) + " is none",
          "write one of its values");
      return Optional.empty();
    }
    if (!subject.operands().isEmpty()) {
      problems.add(
          place,
          Words.quoted(subject.id()) + " is computed, so `cannot be taken` does not fit it",
          "ask it of what it is computed from: " + Words.and(subject.operands()));
      return Optional.empty();
    }
    return Optional.of(new CannotBeTaken());
  }
}
