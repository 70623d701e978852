package io.faultwright.measure;

import io.faultwright.measure.Table.Row;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedSet;
import java.util.TreeSet;

/** Takes rules out of a table, and lets rules reach over their borders. */
final class Defects {
  private final Random random;

  Defects(long seed) {
    random = new Random(seed);
  }

  /** The table without some of its rules: where they stood is a gap. */
  Table without(Table table, int rules) {
    List<Row> rows = new ArrayList<>(table.rows());
    for (int i = 0; i < rules; i++) {
      rows.remove(random.nextInt(rows.size()));
    }
    return new Table(table.columns(), rows);
  }

  /** The table with some rules grown by a step or a value over one of their borders. */
  Table widened(Table table, int rules) {
    List<Row> rows = new ArrayList<>(table.rows());
    List<Integer> order = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      order.add(row);
    }
    Collections.shuffle(order, random);
    order.stream()
        .limit(rules)
        .forEach(row -> rows.set(row, widened(table.columns(), rows.get(row))));
    return new Table(table.columns(), rows);
  }

  /**
   * The table with some rules grown so that each lies on exactly one other, of another conclusion.
   */
  Table overlapping(Table table, int rules) {
    List<Row> rows = new ArrayList<>(table.rows());
    int left = rules;
    while (left > 0) {
      int which = random.nextInt(rows.size());
      Row wider = widened(table.columns(), rows.get(which));
      List<Row> met =
          rows.stream().filter(row -> !row.id().equals(wider.id()) && wider.meets(row)).toList();
      if (met.size() == 1 && !met.get(0).conclusion().equals(wider.conclusion())) {
        rows.set(which, wider);
        left--;
      }
    }
    return new Table(table.columns(), rows);
  }

  private Row widened(List<Column> columns, Row row) {
    List<Row> wider = new ArrayList<>();
    for (int column = 0; column < columns.size(); column++) {
      int at = column;
      widened(columns.get(at), row.parts().get(at))
          .ifPresent(part -> wider.add(row.with(at, part)));
    }
    return wider.isEmpty() ? row : wider.get(random.nextInt(wider.size()));
  }

  private Optional<Part> widened(Column column, Part part) {
    if (part.equals(column.whole())) {
      return Optional.empty();
    }
    return Optional.of(
        part instanceof Span span
            ? grown((Column.Amount) column, span)
            : grown((Values) column.whole(), (Values) part));
  }

  /** By a step; up to the end of the range where less than a step would be left. */
  private static Part grown(Column.Amount column, Span span) {
    Span whole = (Span) column.whole();
    int step = 2 * column.step();
    if (span.to() < whole.to()) {
      return new Span(
          span.from(), span.to() + step < whole.to() - 1 ? span.to() + step : whole.to());
    }
    return new Span(
        span.from() - step > whole.from() ? span.from() - step : whole.from(), span.to());
  }

  private Part grown(Values whole, Values part) {
    List<Integer> others = new ArrayList<>(whole.chosen());
    others.removeAll(part.chosen());
    SortedSet<Integer> more = new TreeSet<>(part.chosen());
    more.add(others.get(random.nextInt(others.size())));
    return new Values(more);
  }
}
