package io.faultwright.sheet;

import io.faultwright.diagnostic.Problems;
import io.faultwright.input.Cells;
import io.faultwright.source.SourceFile;
import java.util.List;
import java.util.Optional;

/** Reads the cells of a CSV file; the separator is the one its heading has most of. */
final class CsvReader {
  private CsvReader() {}

  static Grid read(SourceFile file, Problems problems) {
    Cells cells = new Cells(file, problems);
    List<List<GridCell>> rows =
        cells.rows().stream()
            .map(row -> row.stream().map(cell -> new GridCell(cell, GridCell.Kind.UNTOLD)).toList())
            .toList();
    return new Grid(file.path(), Optional.empty(), Optional.of(cells.separator()), rows);
  }
}
