package io.faultwright.sheet;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What becomes of a row.
 *
 * @param index which row of the file it is; for a new row, the one it stands behind, or -1
 * @param before the row in the file; absent for a new row
 * @param after the row in the sheet; absent where it is gone
 */
record RowStep(int index, Optional<TableRow> before, Optional<TableRow> after) {
  boolean isNew() {
    return before.isEmpty();
  }

  boolean isGone() {
    return after.isEmpty();
  }

  /** The columns in which the row in the sheet says something else; none for a new or gone row. */
  List<SheetColumn> changed(List<SheetColumn> columns) {
    return isNew() || isGone() ? List.of() : columns.stream().filter(this::differs).toList();
  }

  private boolean differs(SheetColumn column) {
    Optional<Object> old = before.flatMap(row -> row.meaning(column));
    Optional<Object> fresh = after.flatMap(row -> row.meaning(column));
    return !Objects.equals(old, fresh);
  }
}
