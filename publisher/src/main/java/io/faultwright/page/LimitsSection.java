package io.faultwright.page;

import java.util.List;

/**
 * A table of limits.
 *
 * @param caption what it judges, with the unit
 * @param columns headings, low and high included
 * @param rows cells, one for each heading
 * @param reading how values between rows are found; empty where there is nothing to say
 */
public record LimitsSection(
    String caption, List<String> columns, List<List<String>> rows, String reading) {
  public LimitsSection {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }
}
