package io.faultwright.page;

import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.page.LimitsSection.Grid;
import io.faultwright.page.LimitsSection.GridRow;
import io.faultwright.quantity.Interval;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Limits along two readings as grids, one for each group of equipment: a technician looks up one
 * value at the side and the other at the top.
 */
final class LimitsGrids {
  private final Desk desk;
  private final LimitsTable table;
  private final int side;

  LimitsGrids(Desk desk, LimitsTable table) {
    this.desk = desk;
    this.table = table;
    this.side = points(table.rows(), 1).size() > points(table.rows(), 0).size() ? 1 : 0;
  }

  /** Whether every row stands at a point of a grid. */
  static boolean fit(LimitsTable table) {
    return table.slopesBothWays() && table.rows().stream().noneMatch(row -> row.at().isEmpty());
  }

  /**
   * The grids, in the order of their first rows.
   *
   * @param equipment the words for the equipment of a row
   */
  List<Grid> grids(Function<Row, String> equipment) {
    Map<String, List<Row>> groups =
        table.rows().stream()
            .collect(Collectors.groupingBy(equipment, LinkedHashMap::new, Collectors.toList()));
    return groups.entrySet().stream().map(group -> grid(group.getKey(), group.getValue())).toList();
  }

  private Grid grid(String equipment, List<Row> rows) {
    TreeSet<BigFraction> across = points(rows, 1 - side);
    return new Grid(
        equipment,
        desk.words().subject(driver(side)),
        desk.words().subject(driver(1 - side)),
        across.stream().map(point -> heading(1 - side, point)).toList(),
        points(rows, side).stream().map(point -> row(rows, point, across)).toList());
  }

  private GridRow row(List<Row> rows, BigFraction at, TreeSet<BigFraction> across) {
    return new GridRow(
        heading(side, at),
        across.stream()
            .map(
                point ->
                    row(rows, at, point).map(this::cell).orElseGet(() -> desk.say("not known")))
            .toList());
  }

  private Optional<Row> row(List<Row> rows, BigFraction at, BigFraction across) {
    return rows.stream()
        .filter(row -> point(row, side).equals(at) && point(row, 1 - side).equals(across))
        .findFirst();
  }

  private String cell(Row row) {
    return desk.words().numbers(table.reading(), row.low(), row.high());
  }

  private String heading(int driver, BigFraction point) {
    return desk.words().interval(driver(driver), Interval.point(point));
  }

  private String driver(int number) {
    return table.drivers().get(number);
  }

  private static TreeSet<BigFraction> points(List<Row> rows, int driver) {
    return rows.stream()
        .map(row -> point(row, driver))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static BigFraction point(Row row, int driver) {
    return row.at().get(driver).low().orElseThrow().value();
  }
}
