package io.faultwright.measure;

import io.faultwright.measure.Table.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Cases of the generated handbook: a situation for every rule that no other rule shares. */
final class BookCases {
  /** In bar: below, within and above the limits of {@link BookEquipment} at any ambient. */
  private static final List<Integer> PRESSURES = List.of(2, 12, 28);

  private BookCases() {}

  static void write(StringBuilder text, int symptom, Table table) {
    for (Row row : table.rows()) {
      point(table, row).ifPresent(given -> text.append(recorded(symptom, row, given)));
    }
  }

  private static String recorded(int symptom, Row row, String given) {
    return """
          %1$s-%2$s:
            symptom: %1$s
            given: { model: FL-16, software: 3.2, complaint: %1$s, ambient-temperature: 20 °C%3$s }
            expect: %4$s
        """
        .formatted(Book.symptom(symptom), row.id(), given, Book.fault(symptom, row));
  }

  /** A point of a row that lies in no other; empty where the first tries all lie in others. */
  private static Optional<String> point(Table table, Row row) {
    for (boolean upper : new boolean[] {false, true}) {
      List<Part> point = new ArrayList<>();
      row.parts().forEach(part -> point.add(point(part, upper)));
      Row alone = new Row("point", point, "none");
      if (table.rows().stream().filter(alone::meets).count() == 1) {
        return Optional.of(given(table.columns(), point));
      }
    }
    return Optional.empty();
  }

  private static Part point(Part part, boolean upper) {
    if (part instanceof Values values) {
      return new Values(
          new TreeSet<>(List.of(upper ? values.chosen().last() : values.chosen().first())));
    }
    Span span = (Span) part;
    int value =
        upper
            ? span.high() - (span.highIncluded() ? 0 : 1)
            : span.low() + (span.lowIncluded() ? 0 : 1);
    return Span.closed(value, value);
  }

  private static String given(List<Column> columns, List<Part> point) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < columns.size(); i++) {
      text.append(", ").append(columns.get(i).id()).append(": ");
      text.append(value(columns.get(i), point.get(i)));
    }
    return text.toString();
  }

  private static String value(Column column, Part point) {
    if (column instanceof Column.Amount amount) {
      return ((Span) point).low() + " " + amount.unit();
    }
    int chosen = ((Values) point).chosen().first();
    return column instanceof Column.Choice choice
        ? choice.values().get(chosen)
        : PRESSURES.get(chosen) + " bar(g)";
  }
}
