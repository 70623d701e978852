package io.faultwright.page;

import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.model.Reading;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Tables of limits as printed. */
final class LimitsSections {
  private final Desk desk;
  private final Clauses clauses;

  LimitsSections(Desk desk) {
    this.desk = desk;
    this.clauses = new Clauses(desk);
  }

  LimitsSection of(LimitsTable table) {
    Reading reading = desk.kb().readings().get(table.reading());
    return new LimitsSection(
        reading.title() + unit(reading),
        Stream.concat(
                table.by().stream().map(desk.words()::subject), Stream.of("Not below", "Not above"))
            .toList(),
        table.rows().stream().map(row -> cells(table, row)).toList(),
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

  private String cell(LimitsTable table, Row row, String column) {
    int driver = table.drivers().indexOf(column);
    if (driver >= 0) {
      return row.at().isEmpty() ? "any" : desk.words().interval(column, row.at().get(driver));
    }
    String words =
        Clauses.about(row.builds(), column).stream()
            .map(part -> clauses.value(part, column))
            .collect(Collectors.joining("; "));
    return words.isEmpty() ? "any" : words;
  }

  private String number(LimitsTable table, Optional<BigFraction> value) {
    return value.map(figure -> desk.words().number(table.reading(), figure)).orElse("no limit");
  }

  private String between(LimitsTable table) {
    List<String> drivers = table.drivers().stream().map(desk.words()::subject).toList();
    if (drivers.isEmpty()) {
      return "";
    }
    return table.between().equals(Optional.of(Between.INTERPOLATE))
        ? between(drivers) + " Outside the rows: no limits are known."
        : "Each row holds over its own stretch of "
            + String.join(" and ", drivers)
            + "; a shared end belongs to the upper row.";
  }

  private static String between(List<String> drivers) {
    return drivers.size() == 1
        ? "Between two rows: on the straight line between them."
        : "Between rows: first along "
            + drivers.get(0)
            + " or "
            + drivers.get(1)
            + ", whichever is the larger part of its step, then along the other.";
  }
}
