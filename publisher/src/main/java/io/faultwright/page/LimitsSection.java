package io.faultwright.page;

import java.util.List;

/**
 * A table of limits: a list of rows, or grids where it follows two readings.
 *
 * @param caption what it judges, with the unit
 * @param columns headings, low and high included
 * @param rows cells, one for each heading
 * @param grids one for each group of equipment, or none; then there are no rows
 * @param reading how values between rows are found; empty where there is nothing to say
 */
public record LimitsSection(
    String caption,
    List<String> columns,
    List<List<String>> rows,
    List<Grid> grids,
    String reading) {
  public LimitsSection {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    grids = List.copyOf(grids);
  }

  /**
   * Limits along two readings.
   *
   * @param equipment what it holds for; empty for all
   * @param side the reading whose values stand at the side
   * @param top the reading whose values stand at the top
   * @param columns values at the top
   * @param rows from low to high
   */
  public record Grid(
      String equipment, String side, String top, List<String> columns, List<GridRow> rows) {}

  /** Low and high at one value of the reading at the side, a cell for each column. */
  public record GridRow(String heading, List<String> cells) {}
}
