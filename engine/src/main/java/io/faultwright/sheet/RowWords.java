package io.faultwright.sheet;

import io.faultwright.syntax.Node;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes the rows of a table as YAML, in the style of the rows that are there. */
final class RowWords {
  private static final String PLAIN = "[\\p{L}\\d+-][^\\[\\]{},:#\"'\\\\]*";

  private final List<SheetColumn> columns;
  private final Map<String, CellStyle> styles = new TreeMap<>();

  RowWords(WrittenTable table) {
    this.columns = table.columns();
    columns.forEach(column -> styles.put(column.id(), CellStyle.of(column, table.rows())));
  }

  /** A row on one line: {@code { family: fell, low: 4 }}. */
  String flow(TableRow row) {
    return entries(row).stream().collect(Collectors.joining(", ", "{ ", " }"));
  }

  /** A row with a line for each cell, the first line without indentation. */
  String block(TableRow row, String indentation) {
    return String.join("\n" + indentation, entries(row));
  }

  private List<String> entries(TableRow row) {
    return columns.stream()
        .flatMap(column -> row.cell(column).map(cell -> entry(column, cell)).stream())
        .toList();
  }

  private String entry(SheetColumn column, Node cell) {
    return column.id() + ": " + cell(column, cell);
  }

  /** A cell as YAML. */
  String cell(SheetColumn column, Node cell) {
    return cell.match(
        text -> quoted(shown(column, CellText.of(text))),
        list ->
            list.items().stream()
                .map(item -> cell(column, item))
                .collect(Collectors.joining(", ", "[", "]")),
        map -> "{}");
  }

  private String shown(SheetColumn column, String text) {
    return column.unit().isPresent() ? styles.get(column.id()).apply(text) : text;
  }

  private static String quoted(String text) {
    boolean plain = text.matches(PLAIN) && !text.matches("-(\\s.*)?");
    return plain ? text : "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
