package io.faultwright.page;

import io.faultwright.model.Build;
import io.faultwright.model.Version;
import io.faultwright.page.HeatTable.Cell;
import io.faultwright.page.HeatTable.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Tables with a column for each model and software version. Builds with the same figures share a
 * column, and a table that would be too wide for a sheet of paper is divided.
 */
final class BuildColumns {
  private static final int MOST_COLUMNS = 18;
  private static final String VOID = HeatTable.Level.VOID.word();

  private final List<Build> builds;

  BuildColumns(List<Build> builds) {
    this.builds = List.copyOf(builds);
  }

  /**
   * The tables; none where there is nothing to show on any build.
   *
   * @param rows heading of each row to the cell of a build
   */
  List<HeatTable> tables(String caption, String corner, Map<String, Function<Build, Cell>> rows) {
    Map<List<Cell>, List<Build>> columns = new LinkedHashMap<>();
    for (Build build : builds) {
      List<Cell> column = rows.values().stream().map(row -> row.apply(build)).toList();
      columns.computeIfAbsent(column, cells -> new ArrayList<>()).add(build);
    }
    columns
        .keySet()
        .removeIf(column -> column.stream().allMatch(cell -> cell.level().equals(VOID)));
    List<List<Cell>> all = List.copyOf(columns.keySet());
    int parts = (all.size() + MOST_COLUMNS - 1) / MOST_COLUMNS;
    List<HeatTable> tables = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      List<List<Cell>> some =
          all.subList(part * all.size() / parts, (part + 1) * all.size() / parts);
      String of = parts > 1 ? ", part " + (part + 1) + " of " + parts : "";
      tables.add(table(caption + of, corner, List.copyOf(rows.keySet()), some, columns));
    }
    return tables;
  }

  private HeatTable table(
      String caption,
      String corner,
      List<String> heads,
      List<List<Cell>> some,
      Map<List<Cell>, List<Build>> columns) {
    List<Row> rows = new ArrayList<>();
    for (int row = 0; row < heads.size(); row++) {
      int number = row;
      rows.add(new Row(heads.get(row), some.stream().map(column -> column.get(number)).toList()));
    }
    return new HeatTable(
        caption, corner, true, some.stream().map(columns::get).map(this::heading).toList(), rows);
  }

  /** A line for each model; the versions where not all of its own are meant. */
  private List<String> heading(List<Build> some) {
    if (some.size() == builds.size()) {
      return List.of("all");
    }
    return byModel(some).entrySet().stream()
        .map(
            model ->
                model.getValue().equals(byModel(builds).get(model.getKey()))
                    ? model.getKey()
                    : model.getKey() + " " + String.join(", ", model.getValue()))
        .toList();
  }

  private static Map<String, List<String>> byModel(List<Build> some) {
    return some.stream()
        .collect(
            Collectors.groupingBy(
                build -> build.model().id(),
                LinkedHashMap::new,
                Collectors.mapping(
                    build -> build.software().map(Version::text).orElse("without software"),
                    Collectors.toList())));
  }
}
