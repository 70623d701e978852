package io.faultwright.analysis.space;

import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.Facet;
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
 * The limits of one build as a piecewise linear function of what they follow: the rows that hold
 * for it, in ascending order of the first driver.
 */
final class LimitsCurve {
  private final int drivers;
  private final Optional<Between> between;
  private final List<Row> rows;
  private final Limits limits;

  private LimitsCurve(int drivers, Optional<Between> between, List<Row> rows, Limits limits) {
    this.drivers = drivers;
    this.between = between;
    this.rows = rows;
    this.limits = limits;
  }

  static LimitsCurve of(LimitsTable table, Build build) {
    List<Row> rows =
        table.rows().stream()
            .filter(row -> build.satisfies(row.builds()))
            .sorted(Comparator.comparing(row -> start(row, 0)))
            .toList();
    return new LimitsCurve(table.drivers().size(), table.between(), rows, Limits.of(table, build));
  }

  /** The rows in use, to tell builds apart. */
  List<Row> rows() {
    return rows;
  }

  private static BigFraction start(Row row, int driver) {
    return at(row, driver).flatMap(Interval::low).map(Interval.End::value).orElse(BigFraction.ZERO);
  }

  private static BigFraction end(Row row, int driver) {
    return at(row, driver)
        .flatMap(Interval::high)
        .map(Interval.End::value)
        .orElse(BigFraction.ZERO);
  }

  private static Optional<Interval> at(Row row, int driver) {
    return row.at().stream().skip(driver).findFirst();
  }

  /** The limits at values of the drivers; empty where the table has no figure. */
  Optional<Band> at(List<BigFraction> drivers) {
    return limits.at(drivers);
  }

  /** Whether the limits follow two drivers and are straight between their rows. */
  boolean slopesBothWays() {
    return drivers > 1 && between.equals(Optional.of(Between.INTERPOLATE));
  }

  /** The flat pieces of the limits around a point. */
  List<Facet> facets(List<BigFraction> drivers) {
    return limits.facets(drivers);
  }

  /**
   * Places on a driver between which nothing changes: where the table begins, ends or steps, and,
   * along a single driver, where a limit passes one of the reading's own marks. Along two drivers
   * limits slope in both, and a {@link Coupling} says what meets.
   *
   * @param driver number of the driver in the table
   * @param marks values of the limited reading at which its pieces end
   */
  SortedSet<Cut> cuts(int driver, SortedSet<BigFraction> marks) {
    SortedSet<Cut> cuts = new TreeSet<>();
    for (Row row : rows) {
      cuts.addAll(Cut.around(start(row, driver)));
      cuts.addAll(Cut.around(end(row, driver)));
    }
    if (drivers == 1 && between.equals(Optional.of(Between.INTERPOLATE))) {
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
    BigFraction begin = start(left, 0);
    return Optional.of(begin.add(start(right, 0).subtract(begin).multiply(part)))
        .filter(at -> inside);
  }
}
