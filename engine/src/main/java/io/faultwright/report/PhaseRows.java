package io.faultwright.report;

import java.util.ArrayList;
import java.util.List;

/** Phases as rows: the time ends on the right, all else begins on the left. */
final class PhaseRows {
  private final List<List<String>> rows = new ArrayList<>();

  /** A row; all have the same number of cells. */
  void add(List<String> cells) {
    rows.add(cells.stream().map(Columns::printable).toList());
  }

  String text() {
    StringBuilder text = new StringBuilder();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < row.size(); column++) {
        line.append("  ").append(padded(row.get(column), column));
      }
      text.append(line.toString().stripTrailing()).append("\n");
    }
    return text.toString();
  }

  private String padded(String cell, int column) {
    String blanks = " ".repeat(width(column) - Columns.width(cell));
    return column == 0 ? blanks + cell : cell + blanks;
  }

  private int width(int column) {
    return rows.stream().mapToInt(row -> Columns.width(row.get(column))).max().orElse(0);
  }
}
