package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolver;
import io.faultwright.syntax.FolderReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Tables that a technician looks figures up in: nameplate, limits, saturation. */
class LookUpTablesTest {
  private static final String YAML =
      """
      handbook:
        title: T
        maker: M
        revision: "1"
        date: 2026-01-01
        language: en
        disclaimer: D
      equipment:
        families: { fell: { title: Fell }, tarn: { title: Tarn } }
        options:
          controller: { values: { k1: { title: K1, software: [1.4, 2.9, 2.10] }, none: None } }
        models:
          FL-1:
            family: fell
            options: { controller: k1 }
            refrigerant: R-404A
            data: { charge: 1.1 kg, supply: 230 V }
          FL-2:
            family: fell
            options: { controller: k1 }
            refrigerant: R-404A
            data: { charge: 1.1 kg, supply: 230 V }
          TN-1: { family: tarn, options: { controller: none }, refrigerant: R-290, data: { charge: 0.5 kg } }
          TN-2: { family: tarn, options: { controller: none } }
      readings:
        suction: { ask: P, unit: bar(g), range: 0 to 8, resolution: 0.1, access: refrigerant-circuit }
        line: { ask: L, unit: °C, range: -40 to 30, resolution: 0.5 }
        ambient: { title: Ambient, ask: A, unit: °C, range: -10 to 40, resolution: 1 }
        room: { title: Room, ask: R, unit: °C, range: -30 to 10, resolution: 1 }
        discharge: { ask: D, unit: bar(g), range: 0 to 30, resolution: 0.1 }
        time: { ask: T, unit: min, range: 0 to 60, resolution: 1 }
        superheat: { superheat: { line: line, pressure: suction } }
      limits:
        time:
          by: [software]
          rows: [{ software: below 2.10, low: 10, high: 20 }, { software: 2.10, low: 12, high: 25 }]
        discharge:
          by: [ambient, room, family]
          between: interpolate
          rows:
            - { ambient: 40, room: 10, family: fell, low: 18, high: 25 }
            - { ambient: 0, room: 10, family: fell, low: 9, high: 12 }
            - { ambient: 0, room: -30, family: fell, low: 8, high: 10 }
            - { ambient: 0, room: 10, family: tarn, high: 13 }
            - { ambient: 40, room: 10, family: tarn, low: 17, high: 26 }
      faults:
        low:
          title: Low
          remedy: [Weigh it in.]
          verify: [Look.]
          nameplate: [charge, refrigerant]
          applies: { model: [FL-1, FL-2, TN-1] }
      symptoms:
        warm:
          title: Warm
          rules:
            low: { when: { superheat: above 9 K }, conclude: low, because: b }
            rest: { when: { superheat: at most 9 K }, escalate: hotline, because: b }
      """;

  @TempDir static Path temp;
  private static Published site;

  @BeforeAll
  static void publish() throws IOException {
    site = publish(YAML, "site");
  }

  private static Published publish(String yaml, String folder) throws IOException {
    Path base = Files.createDirectories(temp.resolve(folder + "-base"));
    Files.writeString(base.resolve("handbook.yaml"), yaml);
    KnowledgeBase kb = Resolver.resolve(FolderReader.read(base));
    return Published.publish(kb, Options.draft(List.of(), false), temp.resolve(folder));
  }

  /** The rows of the tables of a class: their cells with commas between them. */
  private static List<String> rows(Published from, String path, String tables) {
    return Elements.of(from.document(path)).stream()
        .filter(element -> element.getTagName().equals("table"))
        .filter(table -> List.of(table.getAttribute("class").split(" ")).contains(tables))
        .flatMap(table -> children(table, "tr"))
        .map(LookUpTablesTest::row)
        .toList();
  }

  private static Stream<Element> children(Element parent, String tag) {
    NodeList found = parent.getElementsByTagName(tag);
    return IntStream.range(0, found.getLength()).mapToObj(i -> (Element) found.item(i));
  }

  private static String row(Element row) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < row.getChildNodes().getLength(); i++) {
      if (row.getChildNodes().item(i) instanceof Element cell) {
        cells.add(cell.getTextContent().strip().replace('\u00A0', ' '));
      }
    }
    return String.join(" | ", cells);
  }

  @Test
  void nameplateFiguresStandBeforeTheRepairWithEqualOnesTogether() {
    assertEquals(
        List.of(
            "Model | charge | refrigerant",
            "FL-1, FL-2 | 1.1 kg | R-404A",
            "TN-1 | 0.5 kg | R-290"),
        rows(site, "fault/low.html", "figures"));
    String page = site.text("fault/low.html");
    assertTrue(page.indexOf("From the nameplate") < page.indexOf("Weigh it in."));
  }

  @Test
  void nameplateFiguresFollowTheUnitsOfTheHandbook() throws IOException {
    Published us = publish(YAML.replace("  language: en", "  language: en\n  units: us"), "us");
    assertEquals("TN-1 | 1.1 lb | R-290", rows(us, "fault/low.html", "figures").get(2));
    assertEquals("°F | psi(g) | psi(a)", rows(us, "refrigerant/R-290.html", "saturation").get(0));
  }

  @Test
  void versionsStandByName() {
    assertEquals(
        List.of("Software | Not below | Not above", "1.4, 2.9 | 10 | 20", "2.10 | 12 | 25"),
        rows(site, "reading/time.html", "limits"));
  }

  @Test
  void limitsAlongTwoReadingsAreGrids() {
    assertEquals(
        List.of(
            "Ambient | Room",
            "-30 °C | 10 °C",
            "0 °C | 8 – 10 | 9 – 12",
            "40 °C | not known | 18 – 25",
            "Ambient | Room",
            "10 °C",
            "0 °C | up to 13",
            "40 °C | 17 – 26"),
        rows(site, "reading/discharge.html", "limits"));
  }

  /**
   * From the published equations (R-290: Lemmon, McLinden and Wagner 2009; R-404A: Lemmon 2003):
   * 474 kPa at 0 °C; at -20 °C bubble 307, dew 300 kPa, all absolute. Glide and gauge follow.
   */
  @Test
  void saturationPressuresAreThoseOfThePublishedEquations() {
    List<String> propane = rows(site, "refrigerant/R-290.html", "saturation");
    assertTrue(propane.contains("0 | 3.73 | 4.74"), propane::toString);
    List<String> blend = rows(site, "refrigerant/R-404A.html", "saturation");
    assertTrue(blend.contains("-20 | 2.06 | 3.07 | 1.99 | 3.00 | 0.6"), blend::toString);
    assertEquals(1 + 56, propane.size(), "every 2 °C from -50 to 60 °C");
  }

  @Test
  void aFlammableRefrigerantHasItsCautionOnTop() {
    String page = site.text("refrigerant/R-290.html");
    int caution = page.indexOf("R-290 (A3): the refrigerant is flammable");
    assertTrue(caution > 0 && caution < page.indexOf("<table"));
    assertFalse(site.text("refrigerant/R-404A.html").contains("class=\"panel"));
  }

  @Test
  void refrigerantsAreReachedFromReadingsStartAndIndex() {
    assertTrue(site.text("reading/superheat.html").contains("../refrigerant/R-290.html"));
    assertTrue(site.text("index.html").contains("refrigerant/R-290.html"));
    assertTrue(site.text("a-z.html").contains("refrigerant/R-404A.html"));
    assertFalse(site.text("reading/suction.html").contains("refrigerant/"));
  }

  @Test
  void withoutAComputedReadingThereIsNoSuchPage() throws IOException {
    String plain =
        YAML.replace(
            "  superheat: { superheat: { line: line, pressure: suction } }",
            "  superheat: { ask: S, unit: K, range: 0 to 30 }");
    Published without = publish(plain, "plain");
    assertTrue(without.pages().noneMatch(path -> path.startsWith("refrigerant/")));
  }

  @Test
  void inBothSystemsEachHasATableOfItsOwn() throws IOException {
    Published both =
        publish(YAML.replace("  language: en", "  language: en\n  units: both"), "both");
    List<String> rows = rows(both, "refrigerant/R-290.html", "saturation");
    assertTrue(rows.contains("0 | 3.73 | 4.74"), rows::toString);
    assertTrue(rows.contains("10 | 5.35 | 6.37"), rows::toString);
    assertTrue(rows.contains("50 | 77.6 | 92.3"), "the same 10 °C; 1 bar is 14.504 psi: " + rows);
    assertEquals(
        "0 °C (32 °F) | up to 13\n(188.5)", rows(both, "reading/discharge.html", "limits").get(6));
  }

  @Test
  void theirPagesAreValidHtml() throws Exception {
    for (String path : site.pages().toList()) {
      assertEquals(List.of(), HtmlCheck.errors(temp.resolve("site").resolve(path)), path);
    }
  }
}
