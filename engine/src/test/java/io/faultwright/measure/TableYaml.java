package io.faultwright.measure;

import io.faultwright.measure.Table.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Rows of a table as conditions of the rule language. */
final class TableYaml {
  private TableYaml() {}

  /** The entries of a {@code when}, a line each; none for a row that tests nothing. */
  static List<String> when(List<Column> columns, Row row) {
    List<String> lines = new ArrayList<>();
    List<String> pairs = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      List<String> patterns = patterns(column, row.parts().get(i));
      patterns.forEach(
          pattern -> (patterns.size() == 1 ? lines : pairs).add(column.id() + ": " + pattern));
    }
    if (!pairs.isEmpty()) {
      lines.add("all:");
      pairs.forEach(pair -> lines.add("  - " + pair));
    }
    return lines;
  }

  /** Patterns that together say the part: none for the whole column, two for half-open spans. */
  private static List<String> patterns(Column column, Part part) {
    if (part.equals(column.whole())) {
      return List.of();
    }
    if (column instanceof Column.Amount amount) {
      return patterns(amount, (Span) part);
    }
    return List.of(
        column instanceof Column.Choice choice
            ? chosen(choice, (Values) part)
            : sides((Values) part));
  }

  private static List<String> patterns(Column.Amount column, Span span) {
    Span whole = (Span) column.whole();
    if (span.lowIncluded() && span.highIncluded() && span.low() == span.high()) {
      return List.of(span.low() + " " + column.unit());
    }
    if (span.from() > whole.from()
        && span.to() < whole.to()
        && span.lowIncluded()
        && span.highIncluded()) {
      return List.of(span.low() + " to " + span.high() + " " + column.unit());
    }
    List<String> patterns = new ArrayList<>();
    if (span.from() > whole.from()) {
      patterns.add(
          (span.lowIncluded() ? "at least " : "above ") + span.low() + " " + column.unit());
    }
    if (span.to() < whole.to()) {
      patterns.add(
          (span.highIncluded() ? "at most " : "below ") + span.high() + " " + column.unit());
    }
    return patterns;
  }

  private static String chosen(Column.Choice column, Values part) {
    List<String> words = part.chosen().stream().map(column.values()::get).toList();
    return words.size() == 1 ? words.get(0) : "[" + String.join(", ", words) + "]";
  }

  private static String sides(Values part) {
    return part.chosen().stream()
        .map(side -> Column.Judged.SIDES.get(side) + " limits")
        .collect(Collectors.collectingAndThen(Collectors.toList(), TableYaml::listed));
  }

  private static String listed(List<String> words) {
    return words.size() == 1 ? words.get(0) : "[" + String.join(", ", words) + "]";
  }
}
