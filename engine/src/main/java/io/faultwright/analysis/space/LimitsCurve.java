package io.faultwright.analysis.space;

import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.Limits;
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
  private final Limits limits;

  private LimitsCurve(Optional<Between> between, List<Row> rows, Limits limits) {
    this.between = between;
    this.rows = rows;
    this.limits = limits;
  }

  static LimitsCurve of(LimitsTable table, Build build) {
    List<Row> rows =
        table.rows().stream()
            .filter(row -> build.satisfies(row.builds()))
            .sorted(Comparator.comparing(LimitsCurve::start))
            .toList();
    return new LimitsCurve(table.between(), rows, Limits.of(table, build));
  }

  /** The rows in use, to tell builds apart. */
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
    return limits.at(driver);
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
