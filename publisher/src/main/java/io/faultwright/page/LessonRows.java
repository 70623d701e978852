package io.faultwright.page;

import io.faultwright.model.LimitsTable.Row;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Which rows of a table along one reading its limits at a value come from. */
final class LessonRows {
  private LessonRows() {}

  /** Positions of the row that holds the value, or of the nearest one on each side. */
  static List<Integer> around(List<Row> rows, BigFraction at) {
    List<Integer> holding =
        positions(rows, row -> row.at().isEmpty() || row.at().get(0).contains(at));
    if (!holding.isEmpty()) {
      return holding;
    }
    List<Integer> next = new ArrayList<>();
    below(rows, at).ifPresent(next::add);
    above(rows, at).ifPresent(next::add);
    return next.stream().sorted().toList();
  }

  private static List<Integer> positions(List<Row> rows, Predicate<Row> wanted) {
    return IntStream.range(0, rows.size()).filter(i -> wanted.test(rows.get(i))).boxed().toList();
  }

  private static Optional<Integer> below(List<Row> rows, BigFraction at) {
    return positions(rows, row -> point(row).map(p -> p.compareTo(at) < 0).orElse(false)).stream()
        .max(Comparator.comparing(i -> point(rows.get(i)).orElseThrow()));
  }

  private static Optional<Integer> above(List<Row> rows, BigFraction at) {
    return positions(rows, row -> point(row).map(p -> p.compareTo(at) > 0).orElse(false)).stream()
        .min(Comparator.comparing(i -> point(rows.get(i)).orElseThrow()));
  }

  private static Optional<BigFraction> point(Row row) {
    return row.at().stream().findFirst().flatMap(Interval::low).map(Interval.End::value);
  }
}
