package io.faultwright.page;

import java.util.List;
import java.util.Locale;

/**
 * A table whose cells are the darker the more is missing; every cell says so in figures, too.
 *
 * @param caption what it shows
 * @param corner what its rows are
 * @param upright whether its headings are long and stand upright
 * @param columns heading of each column, one line or more
 * @param rows the lines
 */
public record HeatTable(
    String caption, String corner, boolean upright, List<List<String>> columns, List<Row> rows) {
  public HeatTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * A line.
   *
   * @param head what it is about
   * @param cells one for each column
   */
  public record Row(String head, List<Cell> cells) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * A figure.
   *
   * @param text as printed
   * @param level {@code whole}, {@code most}, {@code some}, {@code few}, {@code none}, or {@code
   *     void} where there is nothing to show
   */
  public record Cell(String text, String level) {}

  /** How much of something is there. */
  enum Level {
    WHOLE,
    MOST,
    SOME,
    FEW,
    NONE,
    VOID;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
