package io.faultwright.analysis.space;

import io.faultwright.model.Build;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The limits of one build as a piecewise linear function of the driver: the rows that hold for it,
 * in ascending order of the driver.
 */
final class LimitsCurve {
  private final Optional<Between> between;
  private final List<Row> rows;

  private LimitsCurve(Optional<Between> between, List<Row> rows) {
    this.between = between;
    this.rows = rows;
  }

  static LimitsCurve of(LimitsTable table, Build build) {
    List<Row> rows =
        table.rows().stream()
            .filter(row -> EquipmentTruth.holds(row.builds(), build))
            .sorted(Comparator.comparing(LimitsCurve::start))
            .toList();
    return new LimitsCurve(table.between(), rows);
  }

  /** Numbers of the rows in use, to tell builds apart. */
  List<Row> rows() {
    return rows;
  }

  private static BigFraction start(Row row) {
    return row.at().flatMap(Interval::low).map(Interval.End::value).orElse(BigFraction.ZERO);
  }

  private static BigFraction end(Row row) {
    return row.at().flatMap(Interval::high).map(Interval.End::value).orElse(BigFraction.ZERO);
  }

  /** The limits without a driver, or at a value of it; empty where the table has no figure. */
  Optional<Band> at(Optional<BigFraction> driver) {
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    if (between.isEmpty()) {
      return Optional.of(band(rows.get(0)));
    }
    return driver.flatMap(
        value -> between.get() == Between.STEP ? stepAt(value) : interpolatedAt(value));
  }

  private Optional<Band> stepAt(BigFraction value) {
    return rows.stream()
        .filter(row -> start(row).compareTo(value) <= 0 && value.compareTo(end(row)) <= 0)
        .reduce((lower, upper) -> upper)
        .map(LimitsCurve::band);
  }

  private Optional<Band> interpolatedAt(BigFraction value) {
    for (int i = 0; i < rows.size(); i++) {
      int order = start(rows.get(i)).compareTo(value);
      if (order == 0) {
        return Optional.of(band(rows.get(i)));
      }
      if (order > 0) {
        return i == 0 ? Optional.empty() : Optional.of(line(rows.get(i - 1), rows.get(i), value));
      }
    }
    return Optional.empty();
  }

  private static Band line(Row left, Row right, BigFraction value) {
    BigFraction part = value.subtract(start(left)).divide(start(right).subtract(start(left)));
    return new Band(along(left.low(), right.low(), part), along(left.high(), right.high(), part));
  }

  private static Optional<BigFraction> along(
      Optional<BigFraction> left, Optional<BigFraction> right, BigFraction part) {
    return left.flatMap(a -> right.map(b -> a.add(b.subtract(a).multiply(part))));
  }

  private static Band band(Row row) {
    return new Band(row.low(), row.high());
  }

  /**
   * Places on the driver between which nothing changes: where the table begins, ends or steps, and
   * where a limit passes one of the reading's own marks.
   *
   * @param marks values of the limited reading at which its pieces end
   */
  SortedSet<Cut> cuts(SortedSet<BigFraction> marks) {
    SortedSet<Cut> cuts = new TreeSet<>();
    for (Row row : rows) {
      cuts.addAll(Cut.around(start(row)));
      cuts.addAll(Cut.around(end(row)));
    }
    if (between.equals(Optional.of(Between.INTERPOLATE))) {
      for (int i = 0; i + 1 < rows.size(); i++) {
        cuts.addAll(crossings(rows.get(i), rows.get(i + 1), marks));
      }
    }
    return cuts;
  }

  private static List<Cut> crossings(Row left, Row right, SortedSet<BigFraction> marks) {
    List<Cut> cuts = new ArrayList<>();
    for (Function<Row, Optional<BigFraction>> limit :
        List.<Function<Row, Optional<BigFraction>>>of(Row::low, Row::high)) {
      for (BigFraction mark : marks) {
        crossing(left, right, limit, mark).ifPresent(at -> cuts.addAll(Cut.around(at)));
      }
    }
    return cuts;
  }

  /** Where on the driver, strictly between two rows, a limit equals the mark. */
  private static Optional<BigFraction> crossing(
      Row left, Row right, Function<Row, Optional<BigFraction>> limit, BigFraction mark) {
    Optional<BigFraction> from = limit.apply(left);
    Optional<BigFraction> to = limit.apply(right);
    if (from.isEmpty() || to.isEmpty() || from.get().compareTo(to.get()) == 0) {
      return Optional.empty();
    }
    BigFraction part = mark.subtract(from.get()).divide(to.get().subtract(from.get()));
    boolean inside = part.signum() > 0 && part.compareTo(BigFraction.ONE) < 0;
    return Optional.of(start(left).add(start(right).subtract(start(left)).multiply(part)))
        .filter(at -> inside);
  }
}
