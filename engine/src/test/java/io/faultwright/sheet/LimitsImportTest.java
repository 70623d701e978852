package io.faultwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.source.Sources;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Each test gives a table, a sheet, and what the file is afterwards. */
class LimitsImportTest {
  private static final String BLOCK =
      """
      limits: # all of them
        delay: # two rows
          by: [control]
          rows: # here they come
            # the old board
            - { control: k1, low: 1.0 } # measured

            # the new board
            - { control: k2,   low: 2.50, high: 9.0 }
        superheat: { rows: [{ high: 9 }] } # on one line
      """;

  @Test
  void aFigureThatChangedIsAllThatChanges() {
    assertEquals(
        BLOCK.replace("2.50", "2.75"),
        Sample.after(BLOCK, "delay", "control,low,high\nk1,1,\nk2,2.75,9\n"));
  }

  @Test
  void aNewFigureLooksLikeThoseBesideIt() {
    assertEquals(
        BLOCK.replace("high: 9.0", "high: 10.0").replace("low: 1.0", "low: 2.0"),
        Sample.after(BLOCK, "delay", "control,low,high\nk1,2,\nk2,2.5,10\n"));
  }

  @Test
  void anEndThatIsNewOrGoneRewritesItsRow() {
    assertEquals(
        BLOCK
            .replace("low: 1.0 }", "low: 1.0, high: 3.0 }")
            .replace("{ control: k2,   low: 2.50, high: 9.0 }", "{ control: k2, low: 2.50 }"),
        Sample.after(BLOCK, "delay", "control,low,high\nk1,1,3\nk2,2.5,\n"));
  }

  @Test
  void theOrderOfTheSheetDoesNotMatter() {
    assertEquals(BLOCK, Sample.after(BLOCK, "delay", "high,control,low\n9,k2,2.5\n,k1,1\n"));
  }

  @Test
  void aNewRowStandsBehindTheOneThatPrecedesItInTheSheet() {
    assertEquals(
        BLOCK.replace(
            "# measured\n", "# measured\n      - { control: not k2, low: 3.0, high: 4.0 }\n"),
        Sample.after(BLOCK, "delay", "control,low,high\nk1,1,\nnot k2,3,4\nk2,2.5,9\n"));
    assertEquals(
        BLOCK.replace(
            "      # the old board\n",
            "      - { control: [k1, k2], high: 4.0 }\n      # the old board\n"),
        Sample.after(BLOCK, "delay", "control,low,high\n\"k1, k2\",,4\nk1,1,\nk2,2.5,9\n"));
  }

  @Test
  void aRowThatIsGoneTakesItsCommentsAlongAndSaysSo() {
    Imported imported = Sample.readCsv(BLOCK, "delay", "control,low,high\nk2,2.5,9\n");
    assertEquals(
        BLOCK
            .replace("      # the old board\n", "")
            .replace("      - { control: k1, low: 1.0 } # measured\n", ""),
        imported.files().get(Sample.LIMITS));
    assertEquals(
        List.of("limits.yaml:5:7", "limits.yaml:6:35"),
        imported.lostComments().stream().map(one -> one.places().get(0).toString()).toList());
  }

  @Test
  void aRowThatIsAboutSomethingElseNowKeepsItsPlaceAndComments() {
    Imported imported = Sample.readCsv(BLOCK, "delay", "control,low,high\nnot k2,1,\nk2,2.5,9\n");
    assertEquals(
        BLOCK.replace("{ control: k1,", "{ control: not k2,"), imported.files().get(Sample.LIMITS));
    assertEquals(List.of(), imported.lostComments());
  }

  @Test
  void itSaysWhatChangesAndWhichCommentsToLookAt() {
    Imported imported =
        Sample.readCsv(BLOCK, "delay", "control,low,high\nk1,1.5,\n\"k1, k2\",9,10\n");
    assertEquals(
        """
        delay in limits.yaml
          changed  { control: k1, low: 1.0 }
                     low: 1.0 -> 1.5
          new      { control: [k1, k2], low: 9.0, high: 10.0 }
          gone     { control: k2, low: 2.50, high: 9.0 }
          comment  limits.yaml:5 # the old board
                   kept at a row that changed; does it still hold?
          comment  limits.yaml:6 # measured
                   kept at a row that changed; does it still hold?
          comment  limits.yaml:8 # the new board
                   lost
          rows: 1 changed, 1 new, 1 gone, 0 as before
        """,
        ImportText.write(imported));
  }

  @Test
  void lineEndsAndByteOrderMarkStay() {
    String windows = "\uFEFF" + BLOCK.replace("\n", "\r\n");
    assertEquals(
        windows
            .replace("2.50", "2.75")
            .replace("# measured\r\n", "# measured\r\n      - { control: not k2, low: 3.0 }\r\n"),
        Sample.after(windows, "delay", "control,low,high\r\nk1,1,\r\nnot k2,3,\r\nk2,2.75,9\r\n"));
  }

  @Test
  void aLineThatEndsOtherwiseThanTheOthersStaysSo() {
    String mixed =
        BLOCK.replace("# measured\n", "# measured\r\n").replace("# here they come\n", "#\r\n");
    assertEquals(
        mixed.replace("2.50", "2.75"),
        Sample.after(mixed, "delay", "control,low,high\nk1,1,\nk2,2.75,9\n"));
  }

  @Test
  void rowsInBracketsBecomeLinesWhereOneIsNew() {
    String brackets =
        "limits:\n  delay:\n    rows: [{ high: 9 }]   # none other\n    by: [control]\n";
    assertEquals(
        "limits:\n  delay:\n    rows:\n      - { high: 9 }\n      - { control: k2, high: 8 }   # none other\n"
            + "    by: [control]\n",
        Sample.after(brackets, "delay", "control,low,high\n,,9\nk2,,8\n"));
    assertEquals(
        brackets.replace("9", "8"), Sample.after(brackets, "delay", "control,low,high\n,,8\n"));
  }

  @Test
  void rowsOfATableInBracesStayInBrackets() {
    String braces =
        "limits: { delay: { by: control, rows: [] }, superheat: { rows: [{ low: 1 }] } }";
    assertEquals(
        braces.replace("[]", "[{ control: k1, low: 1 }, { control: k2, low: 2 }]"),
        Sample.after(braces, "delay", "control,low,high\nk1,1,\nk2,2,\n"));
  }

  @Test
  void noRowsYet() {
    assertEquals(
        "limits:\n  delay:\n    rows:\n      - { low: 1, high: 2.5 }\n",
        Sample.after("limits:\n  delay:\n    rows: []\n", "delay", "low,high\n1,2.5\n"));
  }

  @Test
  void rowsWithALineForEachCellGetMoreOfTheirKind() {
    String lines = "limits:\n  delay:\n    by: control\n    rows:\n    - control: k1\n      low: 1";
    assertEquals(
        lines + "\n    - control: k2\n      low: 2\n      high: 3",
        Sample.after(lines, "delay", "control,low,high\nk1,1,\nk2,2,3\n").stripTrailing());
  }

  @Test
  void unitsConvertExactly() {
    String table =
        "limits:\n  discharge-pressure:\n    by: ambient\n    between: interpolate\n    rows:\n"
            + "      - { ambient: 10 °C, low: 1, high: 2 }\n";
    assertEquals(
        table
            .replace("10 °C", "20 °C")
            .replace("low: 1", "low: 30 psi(g)")
            .replace("high: 2", "high: 2.5"),
        Sample.after(
            table, "discharge-pressure", "ambient [°F],low [psi(g)],high [kPa(g)]\n68,30,250\n"));
    assertEquals(
        table,
        Sample.after(
            table, "discharge-pressure", "ambient [°F],low [kPa(g)],high [MPa(g)]\n50,100,0.2\n"));
  }

  @Test
  void stretchesConvertToo() {
    String table =
        "limits:\n  superheat:\n    by: ambient\n    between: step\n    rows:\n"
            + "      - { ambient: 10 to 20 °C, low: 1 }\n";
    assertEquals(
        table.replace("10 to 20 °C", "-5 to 20 °C"),
        Sample.after(table, "superheat", "ambient [°F],low,high\n23 to 68,1,\n"));
  }

  @Test
  void decimalCommasBetweenSemicolonsAndTabs() {
    assertEquals(
        BLOCK.replace("2.50", "2.25"),
        Sample.after(BLOCK, "delay", "control;low;high\nk1;1,0;\nk2;2,25;9\n"));
    assertEquals(
        BLOCK.replace("2.50", "2.125"),
        Sample.after(BLOCK, "delay", "control\tlow\thigh\nk1\t1,0\t\nk2\t2,125\t9\n"));
    assertEquals(
        BLOCK.replace("2.50", "1.125"),
        Sample.after(BLOCK, "delay", "control;low;high\nk1;1.0;\nk2;1.125;9\n"));
  }

  @Test
  void rowsWithoutAnythingAndSpacesAroundDoNotMatter() {
    assertEquals(
        BLOCK,
        Sample.after(
            BLOCK, "delay", "\uFEFF control , low [ min ],high\n,,\n k1 , 1 ,\n\nk2,2.5,9\n,,\n"));
  }

  @Test
  void numbersAsWorkbooksStoreThem() {
    byte[] book =
        Sample.workbook(
            workbook -> {
              var sheet = workbook.newWorksheet("any name");
              sheet.value(0, 0, "control");
              sheet.value(0, 1, "low [min]");
              sheet.value(0, 2, "high [min]");
              sheet.value(1, 0, "k1");
              // What a program writes that holds 1.1 in binary, with all its 17 digits.
              sheet.value(1, 1, new BigDecimal("1.1000000000000001"));
              sheet.value(3, 0, "k2");
              sheet.value(3, 1, new BigDecimal("8.1999999999999993"));
              sheet.value(3, 2, new BigDecimal("1.2E+1"));
            });
    Imported imported = Sample.read(BLOCK, Sample.xlsx(book), List.of("delay"));
    assertEquals(
        BLOCK.replace("1.0 }", "1.1 }").replace("2.50", "8.2").replace("9.0", "12.0"),
        imported.files().get(Sample.LIMITS));
  }

  @Test
  void percentagesMeanWhatAPersonSees() {
    byte[] book =
        Sample.workbook(
            workbook -> {
              var sheet = workbook.newWorksheet("opening");
              sheet.value(0, 0, "doors");
              sheet.value(0, 1, "low");
              sheet.value(0, 2, "high [%]");
              sheet.value(1, 0, "one");
              sheet.value(1, 2, 0.655);
              sheet.style(1, 2).format("0.0%").set();
              sheet.value(2, 0, 2);
              sheet.value(2, 1, 12.5);
              sheet.value(2, 2, 80);
            });
    Imported imported = Sample.read(Sample.TABLES, Sample.xlsx(book), List.of());
    assertEquals(
        Sample.TABLES.replace("high: 70", "high: 65.5"), imported.files().get(Sample.LIMITS));
  }

  @Test
  void severalSheetsIntoOneFile() {
    Sources sources = Sample.sources(BLOCK);
    byte[] book = LimitsExport.bytes(sources, List.of(), SheetFormat.XLSX);
    assertEquals(Map.of(), Sample.read(BLOCK, Sample.xlsx(book), List.of()).files());
    byte[] edited =
        LimitsExport.bytes(
            Sample.sources(BLOCK.replace("2.50", "3").replace("high: 9 }", "high: 12 }")),
            List.of(),
            SheetFormat.XLSX);
    assertEquals(
        BLOCK.replace("2.50", "3.0").replace("high: 9 }", "high: 12 }"),
        Sample.read(BLOCK, Sample.xlsx(edited), List.of()).files().get(Sample.LIMITS));
    assertFalse(
        Sample.read(BLOCK, Sample.xlsx(edited), List.of("superheat"))
            .files()
            .get(Sample.LIMITS)
            .contains("3.0"));
  }

  @Test
  void aCsvFileMayBeNamedAfterItsTable() {
    SheetFile file =
        SheetFile.read(
            "exports/delay.csv",
            "control,low,high\nk1,1,\nk2,3,9\n".getBytes(StandardCharsets.UTF_8),
            SheetFormat.CSV);
    assertTrue(Sample.read(BLOCK, file, List.of()).files().get(Sample.LIMITS).contains("low: 3.0"));
  }
}
