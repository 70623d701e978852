package io.faultwright.model;

import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a limits table says for one build. Outside its rows, and where rows disagree, it says
 * nothing.
 */
public final class Limits {
  private final int drivers;
  private final List<Row> rows;
  private final Optional<LimitsGrid> grid;

  private Limits(int drivers, List<Row> rows, Optional<LimitsGrid> grid) {
    this.drivers = drivers;
    this.rows = rows;
    this.grid = grid;
  }

  public static Limits of(LimitsTable table, Build build) {
    List<Row> rows = table.rows().stream().filter(row -> build.satisfies(row.builds())).toList();
    boolean anywhere = rows.stream().allMatch(row -> row.at().isEmpty());
    boolean smooth = !anywhere && table.between().equals(Optional.of(Between.INTERPOLATE));
    return new Limits(
        anywhere ? 0 : table.drivers().size(),
        rows,
        smooth ? Optional.of(LimitsGrid.of(rows)) : Optional.empty());
  }

  /** Whether the band depends on the values of drivers. */
  public boolean followsDrivers() {
    return drivers > 0;
  }

  /**
   * The band where the drivers have these values.
   *
   * @param values of the table's drivers, in their order; may be empty where no row depends on them
   */
  public Optional<Band> at(List<BigFraction> values) {
    if (drivers == 0) {
      return agreed(rows);
    }
    if (values.size() < drivers) {
      return Optional.empty();
    }
    return grid.isPresent() ? grid.get().at(values) : step(values);
  }

  /** The flat pieces of the limits that lie around a point, all of which reach that far. */
  public List<Facet> facets(List<BigFraction> values) {
    if (grid.isPresent() && values.size() == drivers) {
      return grid.get().facets(values);
    }
    return List.of(at(values).map(band -> flat(values.size(), band)).orElse(Facet.NONE));
  }

  private static Facet flat(int drivers, Band band) {
    Facet.Figures figures =
        new Facet.Figures(
            band.low().map(low -> Slope.flat(drivers, low)),
            band.high().map(high -> Slope.flat(drivers, high)));
    return new Facet(Optional.empty(), true, Optional.of(figures));
  }

  /** A shared end belongs to the row that begins there, driver by driver. */
  private Optional<Band> step(List<BigFraction> values) {
    List<Row> here = rows.stream().filter(row -> holds(row, values)).toList();
    for (int i = 0; i < drivers; i++) {
      here = beginningFirst(here, i, values.get(i));
    }
    return agreed(here);
  }

  private static boolean holds(Row row, List<BigFraction> values) {
    return IntStream.range(0, row.at().size())
        .allMatch(i -> row.at().get(i).contains(values.get(i)));
  }

  private static List<Row> beginningFirst(List<Row> rows, int driver, BigFraction value) {
    boolean begins = rows.stream().anyMatch(row -> beginsAt(row, driver, value));
    return rows.stream()
        .filter(row -> !begins || beginsAt(row, driver, value) || !endsAt(row, driver, value))
        .toList();
  }

  private static boolean beginsAt(Row row, int driver, BigFraction value) {
    return at(row, driver).flatMap(Interval::low).filter(end -> isAt(end, value)).isPresent();
  }

  private static boolean endsAt(Row row, int driver, BigFraction value) {
    return at(row, driver).flatMap(Interval::high).filter(end -> isAt(end, value)).isPresent();
  }

  private static Optional<Interval> at(Row row, int driver) {
    return row.at().stream().skip(driver).findFirst();
  }

  private static boolean isAt(End end, BigFraction value) {
    return end.value().compareTo(value) == 0;
  }

  /** The band that all rows give; absent where there is none or they differ. */
  static Optional<Band> agreed(List<Row> rows) {
    Set<Band> bands = new HashSet<>();
    rows.forEach(row -> bands.add(new Band(row.low(), row.high())));
    return bands.size() == 1 ? Optional.of(bands.iterator().next()) : Optional.empty();
  }
}
