package io.faultwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** Rows of a small table: some columns begin on the left, the others end on the right. */
final class AlignedRows {
  private static final String BETWEEN = "  ";

  private final List<List<String>> rows = new ArrayList<>();
  private final IntPredicate right;

  /** The first column begins on the left, all others end on the right. */
  AlignedRows() {
    this(column -> column > 0);
  }

  /**
   * @param right which columns end on the right
   */
  AlignedRows(IntPredicate right) {
    this.right = right;
  }

  /** A row; all have the same number of cells. */
  void add(List<String> cells) {
    rows.add(cells.stream().map(Columns::printable).toList());
  }

  /** The rows, each with a line feed, without blanks at the end of a line. */
  String text() {
    StringBuilder text = new StringBuilder();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(BETWEEN);
      for (int column = 0; column < row.size(); column++) {
        line.append(column == 0 ? "" : BETWEEN).append(padded(row.get(column), column));
      }
      text.append(line.toString().stripTrailing()).append("\n");
    }
    return text.toString();
  }

  private String padded(String cell, int column) {
    String blanks = " ".repeat(width(column) - Columns.width(cell));
    return right.test(column) ? blanks + cell : cell + blanks;
  }

  private int width(int column) {
    return rows.stream().mapToInt(row -> Columns.width(row.get(column))).max().orElse(0);
  }
}
