package io.faultwright.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.source.Sources;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class LimitsExportTest {
  private static final Sources SOURCES = Sample.sources(Sample.TABLES);

  private static byte[] csv(String reading) {
    return LimitsExport.bytes(SOURCES, List.of(reading), SheetFormat.CSV);
  }

  private static byte[] xlsx(String... readings) {
    return LimitsExport.bytes(SOURCES, List.of(readings), SheetFormat.XLSX);
  }

  @TestFactory
  List<DynamicTest> everyTableIsAsStored() {
    return List.of(
            "discharge-pressure",
            "delay",
            "superheat",
            "opening",
            "starts-in-the-hour-after-the-defrost")
        .stream()
        .map(
            id ->
                DynamicTest.dynamicTest(
                    id,
                    () -> Sample.check(Sample.RESOURCES.resolve("export/" + id + ".csv"), csv(id))))
        .toList();
  }

  @Test
  void theWorkbookIsAsStored() {
    Sample.check(Sample.RESOURCES.resolve("export/limits.xlsx"), xlsx());
  }

  @Test
  void clockZoneAndLanguageLeaveNoTrace() throws InterruptedException {
    byte[] here = xlsx();
    TimeZone zone = TimeZone.getDefault();
    Locale language = Locale.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      // Longer than the two seconds that times in an archive count in.
      Thread.sleep(2_100);
      assertArrayEquals(here, xlsx());
      assertArrayEquals(csv("delay"), csv("delay"));
    } finally {
      TimeZone.setDefault(zone);
      Locale.setDefault(language);
    }
    String all = new String(here, StandardCharsets.ISO_8859_1);
    assertFalse(all.contains("dcterms:created"), "the moment of the export");
    String user = System.getProperty("user.name");
    assertFalse(user.length() > 3 && all.contains(user), "who exported");
  }

  /** ECMA-376 part 1, 18.18.11 (ST_CellType): {@code n} is a number, {@code s} a shared text. */
  @Test
  void numbersAreNumbersAndVersionsAreTexts() throws Exception {
    SortedMap<String, byte[]> parts = parts(xlsx("delay"));
    Document sheet = parse(parts.get("xl/worksheets/sheet1.xml"));
    List<String> texts = texts(parse(parts.get("xl/sharedStrings.xml")));
    assertEquals("s", cell(sheet, "B2").getAttribute("t"));
    assertEquals("2.10", texts.get(Integer.parseInt(cell(sheet, "B2").getTextContent())));
    assertEquals("n", cell(sheet, "C2").getAttribute("t"));
    assertEquals("1.25", cell(sheet, "C2").getTextContent());
    assertEquals("1.5", cell(sheet, "C4").getTextContent(), "90 s in minutes");
    assertEquals("low [min]", texts.get(Integer.parseInt(cell(sheet, "C1").getTextContent())));
  }

  /** ECMA-376 part 1, 18.8.30 (numFmt): number 49 or the code {@code @} is text. */
  @Test
  void whatIsTypedIntoAColumnOfVersionsStaysText() throws Exception {
    SortedMap<String, byte[]> parts = parts(xlsx("delay"));
    Element column =
        (Element) parse(parts.get("xl/worksheets/sheet1.xml")).getElementsByTagName("col").item(1);
    Document styles = parse(parts.get("xl/styles.xml"));
    NodeList cells =
        ((Element) styles.getElementsByTagName("cellXfs").item(0)).getElementsByTagName("xf");
    Element style = (Element) cells.item(Integer.parseInt(column.getAttribute("style")));
    String format = style.getAttribute("numFmtId");
    String code = "";
    NodeList formats = styles.getElementsByTagName("numFmt");
    for (int i = 0; i < formats.getLength(); i++) {
      Element one = (Element) formats.item(i);
      code = one.getAttribute("numFmtId").equals(format) ? one.getAttribute("formatCode") : code;
    }
    assertTrue(format.equals("49") || code.equals("@"), format + " " + code);
  }

  @Test
  void aLongIdHasAShortSheetName() {
    assertEquals(
        "starts-in-the-hour-after-the-~1",
        SheetNames.of(List.of("starts-in-the-hour-after-the-defrost"))
            .get("starts-in-the-hour-after-the-defrost"));
    SortedMap<String, String> two =
        SheetNames.of(
            List.of(
                "starts-in-the-hour-after-the-defrost",
                "starts-in-the-hour-after-the-defrost-of-the-drain"));
    assertEquals(2, two.values().stream().distinct().count(), two.toString());
  }

  @Test
  void csvHoldsOneTable() {
    String refusal =
        Sample.refusal(() -> LimitsExport.bytes(SOURCES, List.of(), SheetFormat.CSV), SOURCES);
    assertEquals(
        """
        error: a CSV file holds one table, and there are 5
          help: choose one with `--limits`, or write a workbook: `.xlsx`
        """,
        refusal);
  }

  @Test
  void tablesThatAreNotThere() {
    String refusal =
        Sample.refusal(
            () -> LimitsExport.bytes(SOURCES, List.of("delai", "ambient"), SheetFormat.XLSX),
            SOURCES);
    assertEquals(
        """
        error: there is no table of limits for `delai`
          help: did you mean `delay`?

        error: there is no table of limits for `ambient`
          help: write it below `limits:` first, with its `by` and `rows: []`

        2 problems; nothing was done
        """,
        refusal);
  }

  private static SortedMap<String, byte[]> parts(byte[] workbook) throws IOException {
    SortedMap<String, byte[]> parts = new TreeMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(workbook))) {
      for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
        parts.put(part.getName(), in.readAllBytes());
      }
    }
    return parts;
  }

  private static Document parse(byte[] xml) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(xml));
  }

  private static Element cell(Document sheet, String address) {
    NodeList cells = sheet.getElementsByTagName("c");
    for (int i = 0; i < cells.getLength(); i++) {
      if (((Element) cells.item(i)).getAttribute("r").equals(address)) {
        return (Element) cells.item(i);
      }
    }
    throw new AssertionError("no cell " + address);
  }

  private static List<String> texts(Document shared) {
    NodeList texts = shared.getElementsByTagName("si");
    return IntStream.range(0, texts.getLength())
        .mapToObj(i -> texts.item(i).getTextContent())
        .toList();
  }
}
