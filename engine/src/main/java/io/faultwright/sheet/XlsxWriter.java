package io.faultwright.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Writes sheets as an XLSX workbook; the same sheets give the same bytes. */
final class XlsxWriter {
  private static final String TEXT_FORMAT = "@";
  private static final int NARROWEST = 8;
  private static final int WIDEST = 60;

  private XlsxWriter() {}

  static byte[] bytes(List<Sheet> sheets) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "Faultwright", null)) {
      sheets.forEach(sheet -> write(sheet, workbook.newWorksheet(sheet.name())));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Repacked.of(out.toByteArray());
  }

  private static void write(Sheet sheet, Worksheet to) {
    for (int c = 0; c < sheet.columns().size(); c++) {
      SheetColumn column = sheet.columns().get(c);
      // What a trainer types into a column of texts stays a text: 2.10 does not become 2.1.
      if (column.unit().isEmpty()) {
        to.style(c).format(TEXT_FORMAT).set();
      }
      to.value(0, c, column.heading());
      to.style(0, c).bold().set();
      to.width(c, width(sheet, c));
      for (int r = 0; r < sheet.rows().size(); r++) {
        write(sheet.rows().get(r).get(c), column, to, r + 1, c);
      }
    }
    to.freezePane(0, 1);
  }

  private static void write(SheetCell cell, SheetColumn column, Worksheet to, int r, int c) {
    if (cell.number().isPresent()) {
      to.value(r, c, cell.number().get());
    } else if (!cell.text().isEmpty()) {
      to.value(r, c, cell.text());
    }
    if (column.unit().isEmpty()) {
      to.style(r, c).format(TEXT_FORMAT).set();
    }
  }

  private static int width(Sheet sheet, int column) {
    int heading = sheet.columns().get(column).heading().length();
    int longest =
        sheet.rows().stream().mapToInt(row -> row.get(column).text().length()).max().orElse(0);
    return Math.min(WIDEST, Math.max(NARROWEST, Math.max(heading, longest)) + 2);
  }
}
