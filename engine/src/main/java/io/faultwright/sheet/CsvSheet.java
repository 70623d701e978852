package io.faultwright.sheet;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Writes a sheet as CSV: commas between cells, decimals with a full stop. */
final class CsvSheet {
  /** Without it spreadsheet programs take the file for another encoding, and {@code °} breaks. */
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private CsvSheet() {}

  static byte[] bytes(Sheet sheet) {
    StringWriter text = new StringWriter();
    text.write(BYTE_ORDER_MARK);
    CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator("\n").get();
    try (CSVPrinter printer = new CSVPrinter(text, format)) {
      printer.printRecord(sheet.columns().stream().map(SheetColumn::heading).toList());
      for (List<SheetCell> row : sheet.rows()) {
        printer.printRecord(row.stream().map(SheetCell::text).toList());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
