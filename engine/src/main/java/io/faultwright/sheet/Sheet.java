package io.faultwright.sheet;

import java.util.List;

/**
 * A table as it is written to a file of a spreadsheet.
 *
 * @param name its name in a workbook
 * @param columns its columns
 * @param rows a cell for each column
 */
record Sheet(String name, List<SheetColumn> columns, List<List<SheetCell>> rows) {
  static Sheet of(String name, WrittenTable table) {
    return new Sheet(
        name,
        table.columns(),
        table.rows().stream()
            .map(row -> table.columns().stream().map(column -> SheetCell.of(column, row)).toList())
            .toList());
  }
}
