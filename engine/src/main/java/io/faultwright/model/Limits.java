package io.faultwright.model;

import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a limits table says for one build. Outside its rows, and where rows disagree, it says
 * nothing.
 */
public final class Limits {
  private final boolean stepped;
  private final List<Row> rows;
  private final TreeMap<BigFraction, Optional<Band>> points;

  private Limits(boolean stepped, List<Row> rows) {
    this.stepped = stepped;
    this.rows = rows;
    this.points = stepped ? new TreeMap<>() : points(rows);
  }

  public static Limits of(LimitsTable table, Build build) {
    List<Row> rows = table.rows().stream().filter(row -> build.satisfies(row.builds())).toList();
    boolean anywhere = rows.stream().anyMatch(row -> row.at().isEmpty());
    return new Limits(anywhere || table.between().equals(Optional.of(Between.STEP)), rows);
  }

  /** Whether the band depends on the driver's value. */
  public boolean followsDriver() {
    return rows.stream().anyMatch(row -> row.at().isPresent());
  }

  /**
   * The band at a value of the driver.
   *
   * @param driver what the table follows; may be absent where no row depends on it
   */
  public Optional<Band> at(Optional<BigFraction> driver) {
    if (!followsDriver()) {
      return agreed(rows);
    }
    return driver.flatMap(value -> stepped ? step(value) : interpolate(value));
  }

  private Optional<Band> step(BigFraction value) {
    List<Row> here = rows.stream().filter(row -> holds(row, value)).toList();
    boolean starts = here.stream().anyMatch(row -> startsAt(row, value));
    return agreed(
        here.stream()
            .filter(row -> !starts || startsAt(row, value) || !endsAt(row, value))
            .toList());
  }

  private static boolean holds(Row row, BigFraction value) {
    return row.at().map(stretch -> stretch.contains(value)).orElse(true);
  }

  private static boolean startsAt(Row row, BigFraction value) {
    return row.at().flatMap(Interval::low).filter(end -> isAt(end, value)).isPresent();
  }

  private static boolean endsAt(Row row, BigFraction value) {
    return row.at().flatMap(Interval::high).filter(end -> isAt(end, value)).isPresent();
  }

  private static boolean isAt(End end, BigFraction value) {
    return end.value().compareTo(value) == 0;
  }

  private Optional<Band> interpolate(BigFraction value) {
    var below = points.floorEntry(value);
    var above = points.ceilingEntry(value);
    if (below == null || above == null) {
      return Optional.empty();
    }
    return below.getKey().compareTo(above.getKey()) == 0
        ? below.getValue()
        : between(below, above, value);
  }

  private static Optional<Band> between(
      Map.Entry<BigFraction, Optional<Band>> below,
      Map.Entry<BigFraction, Optional<Band>> above,
      BigFraction value) {
    BigFraction share =
        value.subtract(below.getKey()).divide(above.getKey().subtract(below.getKey()));
    return below
        .getValue()
        .flatMap(from -> above.getValue().map(to -> from.join(to, (a, b) -> line(a, b, share))));
  }

  private static BigFraction line(BigFraction from, BigFraction to, BigFraction share) {
    return from.add(to.subtract(from).multiply(share));
  }

  private static TreeMap<BigFraction, Optional<Band>> points(List<Row> rows) {
    TreeMap<BigFraction, List<Row>> byPoint = new TreeMap<>();
    rows.forEach(row -> byPoint.merge(point(row), List.of(row), Limits::concat));
    TreeMap<BigFraction, Optional<Band>> points = new TreeMap<>();
    byPoint.forEach((point, same) -> points.put(point, agreed(same)));
    return points;
  }

  private static BigFraction point(Row row) {
    return row.at().flatMap(Interval::low).map(End::value).orElseThrow();
  }

  private static List<Row> concat(List<Row> a, List<Row> b) {
    return Stream.concat(a.stream(), b.stream()).toList();
  }

  private static Optional<Band> agreed(List<Row> rows) {
    Set<Band> bands = new HashSet<>();
    rows.forEach(row -> bands.add(new Band(row.low(), row.high())));
    return bands.size() == 1 ? Optional.of(bands.iterator().next()) : Optional.empty();
  }
}
