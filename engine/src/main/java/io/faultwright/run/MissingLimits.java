package io.faultwright.run;

import io.faultwright.compile.Facts;
import io.faultwright.compile.LimitsBook;
import io.faultwright.compile.Statement;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.LimitsTable;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Finds the limits tables without a row for the machine, among those that a situation needs. */
final class MissingLimits {
  private final LimitsBook limits;
  private final Facts facts;

  MissingLimits(LimitsBook limits, Facts facts) {
    this.limits = limits;
    this.facts = facts;
  }

  List<Note> among(List<Statement> statements) {
    return statements.stream()
        .flatMap(statement -> judged(statement.condition()))
        .distinct()
        .sorted()
        .filter(reading -> facts.amount(reading).isPresent())
        .flatMap(reading -> limits.table(reading).stream())
        .flatMap(table -> note(table).stream())
        .toList();
  }

  /** Readings that a condition compares with their limits. */
  private static Stream<String> judged(Condition condition) {
    return condition
        .tests()
        .filter(test -> test.pattern() instanceof AgainstLimits)
        .map(Condition.Test::subject);
  }

  private Optional<Note> note(LimitsTable table) {
    List<BigFraction> at = LimitsBook.drivers(table, facts.situation());
    List<Build> builds =
        facts.candidates().builds().stream().filter(build -> missing(table, build, at)).toList();
    return builds.isEmpty()
        ? Optional.empty()
        : Optional.of(new Note.LimitsMissing(table.reading(), builds, at));
  }

  private boolean missing(LimitsTable table, Build build, List<BigFraction> at) {
    String reading = table.reading();
    boolean waiting = at.isEmpty() && limits.followsDrivers(reading, build);
    return !waiting && limits.band(reading, build, facts.situation()).isEmpty();
  }
}
