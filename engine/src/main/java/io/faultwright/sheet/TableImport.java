package io.faultwright.sheet;

import java.util.List;

/**
 * What an import makes of one table.
 *
 * @param table as it was
 * @param steps what becomes of each row
 * @param remarks comments that are lost, or stand at a row that changed
 */
record TableImport(WrittenTable table, List<RowStep> steps, List<Remark> remarks) {
  boolean changesNothing() {
    return steps.stream()
        .allMatch(
            step -> !step.isNew() && !step.isGone() && step.changed(table.columns()).isEmpty());
  }
}
