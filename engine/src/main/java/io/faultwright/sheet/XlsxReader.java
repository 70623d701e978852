package io.faultwright.sheet;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;

/** Reads the sheets of an XLSX workbook. */
final class XlsxReader {
  private static final int MOST_ROWS = 100_000;

  private final String file;

  private XlsxReader(String file) {
    this.file = file;
  }

  /**
   * Every sheet of a workbook.
   *
   * @throws Unreadable where the bytes are no workbook
   */
  static List<Grid> read(String file, byte[] content) {
    XlsxReader reader = new XlsxReader(file);
    List<Grid> grids = reader.grids(content);
    if (grids.stream().anyMatch(grid -> grid.rows().size() > MOST_ROWS)) {
      throw unreadable("`" + file + "` has a sheet with more than " + MOST_ROWS + " rows");
    }
    return grids;
  }

  private List<Grid> grids(byte[] content) {
    try {
      return grids(content, true);
    } catch (IOException | RuntimeException withoutFormats) {
      return plainGrids(content);
    }
  }

  /** Workbooks of simple programs have no formats of cells. */
  private List<Grid> plainGrids(byte[] content) {
    try {
      return grids(content, false);
    } catch (IOException | RuntimeException broken) {
      throw unreadable("`" + file + "` is not an XLSX workbook, or it is damaged");
    }
  }

  private static Unreadable unreadable(String message) {
    String help = "open it with a spreadsheet program and save it as .xlsx or .csv";
    return new Unreadable(List.of(new Problem(List.of(), message, help)));
  }

  private List<Grid> grids(byte[] content, boolean formats) throws IOException {
    ReadingOptions options = new ReadingOptions(formats, true);
    try (ReadableWorkbook workbook =
        new ReadableWorkbook(new ByteArrayInputStream(content), options)) {
      List<Grid> grids = new ArrayList<>();
      for (Sheet sheet : workbook.getSheets().toList()) {
        grids.add(grid(sheet));
      }
      return grids;
    }
  }

  private Grid grid(Sheet sheet) throws IOException {
    String place = CellNames.file(file, sheet.getName());
    try (Stream<Row> rows = sheet.openStream()) {
      List<List<GridCell>> cells =
          rows.map(row -> XlsxCell.all(row, place))
              .filter(row -> !row.stream().allMatch(GridCell::isBlank))
              .limit(MOST_ROWS + 1L)
              .toList();
      return new Grid(place, Optional.of(sheet.getName()), Optional.empty(), cells);
    } catch (ExcelReaderException | UncheckedIOException broken) {
      throw new IOException(broken);
    }
  }
}
