package io.faultwright.sheet;

import io.faultwright.source.Place;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A row of a table of limits, from the file of a trainer or from a sheet.
 *
 * @param cells what stands in the row, by column; a column that says nothing is left out
 * @param place where it stands
 */
record TableRow(Map<String, Node> cells, Place place) {
  /** The place of a row of which not everything could be read. */
  static final Place NOWHERE = new Place("", 1, 1, 1);

  TableRow {
    cells = Map.copyOf(cells);
  }

  /** A row as it was written. */
  static TableRow of(MapNode row) {
    Map<String, Node> cells = new LinkedHashMap<>();
    row.entries().forEach(entry -> cells.put(entry.name(), entry.value()));
    return new TableRow(cells, row.place());
  }

  Optional<Node> cell(SheetColumn column) {
    return Optional.ofNullable(cells.get(column.id()));
  }

  /** The text of a cell; empty where it says nothing. */
  String text(SheetColumn column) {
    return cell(column).map(CellText::of).orElse("");
  }

  /** What a cell means; empty where it says nothing. */
  Optional<Object> meaning(SheetColumn column) {
    return cell(column).map(node -> CellText.meaning(column, node));
  }

  /** What the row is about: its cells without the two ends. */
  List<Optional<Object>> about(List<SheetColumn> columns) {
    return columns.stream().filter(column -> !column.isEnd()).map(this::meaning).toList();
  }

  /** The row as YAML would say it. */
  Node node(List<SheetColumn> columns) {
    List<Entry> entries = new ArrayList<>();
    for (SheetColumn column : columns) {
      cell(column)
          .map(value -> new Entry(new Scalar(column.id(), false, value.place()), value))
          .ifPresent(entries::add);
    }
    return new MapNode(entries, place);
  }
}
