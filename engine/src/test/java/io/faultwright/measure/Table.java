package io.faultwright.measure;

import java.util.ArrayList;
import java.util.List;

/**
 * A decision table in no tool's form.
 *
 * @param columns what the rows test
 * @param rows its rules
 */
record Table(List<Column> columns, List<Row> rows) {
  Table {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * A rule.
   *
   * @param id its name
   * @param parts for each column what it accepts; the whole column where it does not test it
   * @param conclusion what follows
   */
  record Row(String id, List<Part> parts, String conclusion) {
    Row {
      parts = List.copyOf(parts);
    }

    /** Whether both hold in some situation. */
    boolean meets(Row other) {
      for (int column = 0; column < parts.size(); column++) {
        if (!parts.get(column).meets(other.parts.get(column))) {
          return false;
        }
      }
      return true;
    }

    Row with(int column, Part part) {
      List<Part> changed = new ArrayList<>(parts);
      changed.set(column, part);
      return new Row(id, changed, conclusion);
    }
  }

  /** The part of each column that holds everything. */
  static List<Part> everything(List<Column> columns) {
    return columns.stream().map(Column::whole).toList();
  }
}
