package io.faultwright.sheet;

import io.faultwright.diagnostic.Problems;
import io.faultwright.input.TableRows;
import io.faultwright.input.TableRows.Row;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.Node.Scalar;
import java.io.BufferedReader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the cells of a CSV file; the separator is the one its heading has most of. */
final class CsvReader {
  private CsvReader() {}

  static Grid read(SourceFile file, Problems problems) {
    TableRows table = new TableRows(file.path(), new BufferedReader(new StringReader(file.text())));
    List<List<GridCell>> rows = new ArrayList<>();
    for (Optional<Row> row = table.next(); row.isPresent(); row = table.next()) {
      row.get().problem().ifPresent(problems::add);
      if (row.get().problem().isEmpty()) {
        rows.add(row.get().cells().stream().map(CsvReader::untold).toList());
      }
    }
    return new Grid(file.path(), Optional.empty(), Optional.of(table.separator()), rows);
  }

  private static GridCell untold(Scalar cell) {
    return new GridCell(cell, GridCell.Kind.UNTOLD);
  }
}
