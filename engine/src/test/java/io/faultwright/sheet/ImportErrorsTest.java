package io.faultwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What a trainer reads who gives a sheet that cannot be imported. */
class ImportErrorsTest {
  private static final Path ERRORS = Sample.RESOURCES.resolve("errors");

  /** The folder names the table. */
  @TestFactory
  Stream<DynamicTest> everyStoredSheetIsRefusedInTheStoredWords() throws IOException {
    List<Path> sheets;
    try (Stream<Path> files = Files.walk(ERRORS)) {
      sheets = files.filter(file -> file.toString().endsWith(".csv")).sorted().toList();
    }
    return sheets.stream()
        .map(
            sheet ->
                DynamicTest.dynamicTest(
                    ERRORS.relativize(sheet).toString(), () -> isRefused(sheet)));
  }

  private static void isRefused(Path sheet) throws IOException {
    String reading = sheet.getParent().getFileName().toString();
    byte[] content = Files.readAllBytes(sheet);
    String name = sheet.getFileName().toString();
    Sources shown =
        new Sources(List.of(SourceFile.of(name, new String(content, StandardCharsets.UTF_8))));
    String refusal =
        Sample.refusal(
            () ->
                Sample.read(
                    Sample.TABLES,
                    SheetFile.read(name, content, SheetFormat.CSV),
                    List.of(reading)),
            shown);
    assertFalse(refusal.isEmpty(), "nothing is wrong with it");
    Path expected = sheet.resolveSibling(name.replace(".csv", ".txt"));
    Sample.check(expected, refusal.getBytes(StandardCharsets.UTF_8));
  }

  private static void headings(Worksheet sheet, String... headings) {
    for (int i = 0; i < headings.length; i++) {
      sheet.value(0, i, headings[i]);
    }
  }

  private static String refused(Consumer<Workbook> content, String... readings) {
    return Sample.refusal(
        () -> Sample.read(Sample.TABLES, Sample.xlsx(Sample.workbook(content)), List.of(readings)),
        new Sources(List.of()));
  }

  @Test
  void cellsOfAWorkbookAreNamedAsItNamesThem() {
    String refusal =
        refused(
            workbook -> {
              Worksheet sheet = workbook.newWorksheet("delay");
              headings(sheet, "control", "software", "low [s]", "hihg");
              sheet.value(2, 0, "k3");
              sheet.value(2, 1, 2.1);
              sheet.value(2, 2, "a lot");
              sheet.value(3, 2, "8.5");
              sheet.value(4, 2, true);
              sheet.value(5, 2, -7);
              Worksheet other = workbook.newWorksheet("superheat");
              headings(other, "ambient [°C]", "low [K]", "high [K]");
              other.value(1, 0, "10 to 20");
              other.formula(1, 1, "B3*2");
              other.value(1, 2, LocalDate.of(2026, 2, 8));
              other.style(1, 2).format("yyyy-MM-dd").set();
              other.value(1, 27, "far off");
            });
    assertEquals(
        """
        error: book.xlsx, sheet "delay", cell D1: the table has no column `hihg`
          help: did you mean `high`?

        error: book.xlsx, sheet "delay", cell A3: `control` has no value `k3`
          help: did you mean `k1`?

        error: book.xlsx, sheet "delay", cell B3: expected a text, found the number 2.1
          help: format the column as text and type it again: as a number, the version 2.10 is 2.1

        error: book.xlsx, sheet "delay", cell C3: expected a number, found `a lot`
          help: write a number such as `12.5`, with its unit behind it if you like

        error: book.xlsx, sheet "delay", cell C4: expected a number, found the text `8.5`
          help: format the cell as a number, and type it again

        error: book.xlsx, sheet "delay", cell C5: expected a number, found `TRUE`
          help: write a number such as `12.5`, with its unit behind it if you like

        error: book.xlsx, sheet "delay", cell C6: `-0.116667 min` is outside the range of `delay`
          help: its range is `0 to 500 min`; correct the value, or widen the range

        error: book.xlsx, sheet "superheat", cell B2: the formula `=B3*2` has no stored value
          help: open the file with a spreadsheet program and save it, or type the value

        error: book.xlsx, sheet "superheat", cell C2: expected a number, found the date 2026-02-08
          help: programs of some countries take `8.2` for a day; format the cell as a number or a text, and type it again

        error: book.xlsx, sheet "superheat", cell AB2: `far off` stands in a column without a heading
          help: write the heading, or empty the cell; a comma inside a cell needs quotes

        10 problems; nothing was done
        """,
        refusal);
  }

  @Test
  void sheetsThatBelongToNoTable() {
    assertEquals(
        """
        error: book.xlsx: there is no table of limits for the sheet "delais"
          help: did you mean `delay`? name the tables to import with `--limits`
        """,
        refused(workbook -> headings(workbook.newWorksheet("delais"), "low")));
    assertEquals(
        """
        error: book.xlsx: there is no sheet "delay"
          help: did you mean `delays`?
        """,
        refused(
            workbook -> {
              headings(workbook.newWorksheet("delays"), "low");
              headings(workbook.newWorksheet("notes"), "low");
            },
            "delay"));
  }

  @Test
  void filesThatAreNoWorkbooks() {
    for (byte[] content :
        List.of(
            new byte[0],
            "control,low\n".getBytes(StandardCharsets.UTF_8),
            Arrays.copyOf(Sample.workbook(book -> book.newWorksheet("a")), 700))) {
      Unreadable refusal = Assertions.assertThrows(Unreadable.class, () -> Sample.xlsx(content));
      assertEquals(
          "`book.xlsx` is not an XLSX workbook, or it is damaged",
          refusal.problems().get(0).message());
    }
  }
}
