package io.faultwright.page;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Equipment;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.model.Reading;
import io.faultwright.model.Version;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Tables of limits as printed. */
final class LimitsSections {
  private static final int NAMED_VERSIONS = 6;

  private final Desk desk;
  private final Clauses clauses;

  LimitsSections(Desk desk) {
    this.desk = desk;
    this.clauses = new Clauses(desk);
  }

  LimitsSection of(LimitsTable table) {
    Reading reading = desk.kb().readings().get(table.reading());
    boolean grid = LimitsGrids.fit(table);
    return new LimitsSection(
        reading.title() + unit(reading),
        Stream.concat(
                table.by().stream().map(desk.words()::subject),
                Stream.of(desk.say("Not below"), desk.say("Not above")))
            .toList(),
        grid ? List.of() : table.rows().stream().map(row -> cells(table, row)).toList(),
        grid ? new LimitsGrids(desk, table).grids(row -> equipment(table, row)) : List.of(),
        between(table));
  }

  private String unit(Reading reading) {
    return reading.domain().match(measured -> ", " + desk.words().unit(reading.id()), choice -> "");
  }

  private List<String> cells(LimitsTable table, Row row) {
    return Stream.concat(
            table.by().stream().map(column -> cell(table, row, column)),
            Stream.of(number(table, row.low()), number(table, row.high())))
        .toList();
  }

  /** What a row holds for, on one line; empty for all equipment. */
  private String equipment(LimitsTable table, Row row) {
    return table.by().stream()
        .filter(column -> !table.drivers().contains(column))
        .filter(column -> !Clauses.about(row.builds(), column).isEmpty())
        .map(column -> desk.words().subject(column) + ": " + cell(table, row, column))
        .collect(Collectors.joining("; "));
  }

  private String cell(LimitsTable table, Row row, String column) {
    int driver = table.drivers().indexOf(column);
    if (driver >= 0) {
      return row.at().isEmpty()
          ? desk.say("any")
          : desk.words().interval(column, row.at().get(driver));
    }
    String words =
        Clauses.about(row.builds(), column).stream()
            .map(part -> versions(part, column).orElseGet(() -> clauses.value(part, column)))
            .collect(Collectors.joining("; "));
    return words.isEmpty() ? desk.say("any") : words;
  }

  /** A few versions of the software by name, so that the one in hand is found at a glance. */
  private static Optional<String> versions(Condition part, String column) {
    return Optional.of(part)
        .filter(line -> column.equals(Equipment.SOFTWARE))
        .flatMap(line -> line instanceof Test test ? Optional.of(test.pattern()) : Optional.empty())
        .flatMap(pattern -> pattern instanceof OneOf some ? Optional.of(some) : Optional.empty())
        .filter(some -> some.values().size() <= NAMED_VERSIONS)
        .map(some -> some.values().stream().map(Version::new).sorted().map(Version::text))
        .map(texts -> texts.collect(Collectors.joining(", ")));
  }

  private String number(LimitsTable table, Optional<BigFraction> value) {
    return value
        .map(figure -> desk.words().number(table.reading(), figure))
        .orElseGet(() -> desk.say("no limit"));
  }

  private String between(LimitsTable table) {
    List<String> drivers = table.drivers().stream().map(desk.words()::subject).toList();
    if (drivers.isEmpty()) {
      return "";
    }
    return table.between().equals(Optional.of(Between.INTERPOLATE))
        ? between(drivers)
        : desk.say(
            "Each row holds over its own stretch of {0}; a shared end belongs to the upper row.",
            desk.words().say().andEach(drivers));
  }

  private String between(List<String> drivers) {
    return drivers.size() == 1
        ? desk.say("Between two rows: on the straight line between them.")
            + " "
            + desk.say("Outside the rows: no limits are known.")
        : desk.say(
                "Between two values: go first along {0} or {1}, whichever is the larger part of its"
                    + " step, then along the other.",
                drivers.get(0), drivers.get(1))
            + " "
            + desk.say("Outside the table: no limits are known.");
  }
}
