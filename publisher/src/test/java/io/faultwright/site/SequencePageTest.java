package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolver;
import io.faultwright.syntax.FolderReader;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** The page of a sequence of operation, and its section in the book. */
class SequencePageTest {
  private static final Path BASE = Path.of("../engine/src/test/resources/sequences/heating-cycle");
  private static final String PAGE = "sequence/heating-cycle.html";

  @TempDir static Path temp;
  private static Published site;
  private static String book;

  @BeforeAll
  static void publish() throws IOException {
    site = publish("site", Map.of());
    try (PDDocument document = Loader.loadPDF(site.files().get("handbook.pdf"))) {
      book = new PDFTextStripper().getText(document).replace('\u00A0', ' ');
    }
  }

  /** The heating cycle, with texts replaced. */
  private static KnowledgeBase base(String name, Map<String, String> changes) throws IOException {
    Path to = Files.createDirectories(temp.resolve(name + "-base"));
    for (String file : List.of("handbook.yaml", "sequence.yaml", "rules.yaml")) {
      String text = Files.readString(BASE.resolve(file));
      for (Map.Entry<String, String> change : changes.entrySet()) {
        text = text.replace(change.getKey(), change.getValue());
      }
      Files.writeString(to.resolve(file), text);
    }
    return Resolver.resolve(FolderReader.read(to));
  }

  /** With a book where nothing is changed. */
  private static Published publish(String name, Map<String, String> changes) throws IOException {
    return Published.publish(
        base(name, changes), Options.release(changes.isEmpty()), temp.resolve(name));
  }

  private static List<Element> elements(Published from, String path, String tag, String name) {
    return Elements.of(from.document(path)).stream()
        .filter(element -> element.getTagName().equals(tag))
        .filter(element -> List.of(element.getAttribute("class").split(" ")).contains(name))
        .toList();
  }

  /** The rows of the tables of a class, cells with bars between them. */
  private static List<String> rows(Published from, String tables) {
    return elements(from, PAGE, "table", tables).stream()
        .flatMap(table -> children(table, "tr"))
        .map(SequencePageTest::row)
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
        cells.add(text(cell).strip().replaceAll("[\\s\u00A0]+", " "));
      }
    }
    return String.join(" | ", cells);
  }

  /** Its text, with what is said in place of a mark. */
  private static String text(Node node) {
    if (node instanceof Element element
        && !element.getAttribute("aria-label").isEmpty()
        && element.getAttribute("role").equals("img")) {
      return "[" + element.getAttribute("aria-label") + "]";
    }
    if (node.getNodeType() == Node.TEXT_NODE) {
      return node.getNodeValue();
    }
    StringBuilder text = new StringBuilder();
    for (Node part = node.getFirstChild(); part != null; part = part.getNextSibling()) {
      String apart = part instanceof Element ? " " : "";
      text.append(apart).append(text(part)).append(apart);
    }
    return text.toString();
  }

  @Test
  void thePhasesAreATable() {
    assertEquals(
        """
        No. | Phase | Compressor | Heater | Circulation pump | Drain valve | What ends it, and what follows
        1 | Standby REDY | | | | | Call: Call → Draining A call begins the cycle.
        2 | Draining DRAN | | | [on] | [on] first 40 s | Draining (1 min) is over → Heating
        3 | Heating HEAT | | [on] | | | Release switch opens → Releasing Something begins to leave the plate. \
        Longest heating is over 3 min : Software: 2.9 6 min : Software: at least 2.10 → Building \
        counts Longest heatings in a row; at 3 → Stopped after three longest heatings \
        The longest heating is over and nothing was released.
        4 | Releasing HEAT | | [on] | | | Release switch closes → Building \
        Longest heatings in a row: begins again at 0 The plate is empty. \
        Longest opening of the release switch (25 s) is over → Stopped as full \
        The switch stays open when the store is full.
        5 | Building COOL | [on] | | | | Call: No call → Standby \
        After 10 min → Draining goes ahead of the line to Standby
        6 | Stopped as full STOP FULL | | | | | Release switch is closed → Restart delay
        7 | Stopped after three longest heatings STOP LONG | | | | | Reset button → Restart delay \
        Longest heatings in a row: begins again at 0
        8 | Restart delay WAIT | | | | | Restart delay is over \
        4 min : Controller: K1 controller 2 min : Controller: K2 controller → Standby""",
        String.join("\n", rows(site, "phases")).replace("|  ", "| "));
  }

  @Test
  void machinesWithTheSameTimesShareAColumn() {
    assertEquals(
        """
        Time or limit | Software: 2.9 | Software: 2.10 | Controller: K2 controller
        Drain valve and pump together | 40 s | 40 s | 40 s
        Draining | 1 min | 1 min | 1 min
        Longest heating | 3 min | 6 min | 6 min
        Longest opening of the release switch | 25 s | 25 s | 25 s
        Restart delay | 4 min | 4 min | 2 min
        Longest heatings in a row then follows Stopped after three longest heatings \
        | 3 times | 3 times | 3 times""",
        String.join("\n", rows(site, "times")));
  }

  @Test
  void machinesThatBehaveAlikeShareAColumn() {
    List<String> rows = rows(site, "side-by-side");
    assertEquals(
        1, rows.stream().filter("No. | Software: 2.9 | Software: at least 2.10"::equals).count());
    assertTrue(
        rows.contains(
            "3 | [differs] HEAT 3 min 1:10 – 4:10, Heating | [differs] HEAT 6 min 1:10 – 7:10, Heating"),
        rows.toString());
    assertTrue(
        rows.contains(
            "5 | DRAN 1 min 14:10 – 15:10, Draining | DRAN 1 min 17:10 – 18:10, Draining"),
        "what only comes later does not differ: " + rows);
    assertTrue(
        rows.contains(
            "10 | STOP LONG at least 27 min 50 s from 32:10, Stopped after three longest heatings"
                + " | STOP LONG at least 18 min 50 s from 41:10, Stopped after three longest heatings"),
        rows.toString());
    assertTrue(rows.contains("3 | HEAT 1 min 53 s 1:10 – 3:03, Heating, Releasing"), "one display");
  }

  @Test
  void whatMostMachinesShowIsNotMarked() throws IOException {
    Published three =
        publish(
            "three",
            Map.of(
                "{ applies: { software: at least 2.10 }, lasts: 6 min }",
                "{ applies: { software: 2.10 }, lasts: 3 min }\n"
                    + "          - { applies: { software: 3.0 }, lasts: 5 min }",
                "software: [2.9, 2.10]",
                "software: [2.9, 2.10, 2.11]",
                "{ applies: { software: below 2.10 }, lasts: 3 min }",
                "{ applies: { software: below 2.10 }, lasts: 4 min }\n"
                    + "          - { applies: { software: 2.11 }, lasts: 3 min }\n"));
    String third =
        rows(three, "side-by-side").stream()
            .filter(row -> row.startsWith("3 | ") && row.contains("4 min"))
            .findFirst()
            .orElseThrow();
    assertEquals(3, third.split("\\[differs]").length - 1, "no time is that of most: " + third);
  }

  @Test
  void anOutputOnForAPartOfThePhaseOnSomeMachinesSaysSo() throws IOException {
    Published parts =
        publish(
            "parts",
            Map.of(
                "drain-valve until drain-together",
                "{ output: drain-valve, from: 5 s, until: drain-together, applies: { controller: k1 } }"));
    assertTrue(
        rows(parts, "phases").get(2).contains("[on] 5 s to 40 s Controller: K1 controller"),
        rows(parts, "phases").get(2));
  }

  @Test
  void settingsAndTheirReadingsStandBesideTheTimes() throws IOException {
    Published set =
        publish(
            "set",
            Map.of(
                "title: Restart delay\n        lasts:",
                "title: Restart delay\n        set: 1 to 5 min\n        reading: delay\n        lasts:",
                "sequences:\n",
                "readings:\n  delay: { title: Delay as set, ask: \"Which?\", unit: min, range: 0 to 10,"
                    + " resolution: 1 }\nsequences:\n"));
    List<String> rows = rows(set, "times");
    assertTrue(rows.get(0).endsWith("| Can be set | Read at"), rows.get(0));
    assertTrue(
        rows.contains("Restart delay | 4 min | 4 min | 2 min | 1 min to 5 min | Delay as set"),
        rows.toString());
    assertTrue(set.text("reading/delay.html").contains("../sequence/heating-cycle.html"));
  }

  @Test
  void aTimingDiagramStandsAtEveryCourseForEachKindOfMachine() {
    List<Element> figures = elements(site, PAGE, "figure", "timing");
    assertEquals(4, figures.size(), "one in good order, two where software differs, one held open");
    List<String> captions =
        figures.stream()
            .flatMap(figure -> children(figure, "figcaption"))
            .map(Node::getTextContent)
            .toList();
    assertEquals(
        List.of(
            "Timing diagram: In good order, All equipment",
            "Timing diagram: The switch never opens, Software: 2.9",
            "Timing diagram: The switch never opens, Software: at least 2.10",
            "Timing diagram: Nothing is released, the switch is held open, All equipment"),
        captions);
    assertTrue(text(figures.get(3)).contains("6 Stop: FULL"), "a stop with its code");
    for (Element figure : figures) {
      String drawn = text(figure);
      for (String lane :
          List.of("Compressor", "Drain valve", "Release switch is open", "Call: Call")) {
        assertTrue(drawn.contains(lane), lane);
      }
    }
  }

  @Test
  void itIsFoundFromEverywhere() {
    String course = PAGE + "#course-heating-cycle.stuck-closed";
    assertTrue(site.text("fault/switch-stuck-closed.html").contains("../" + course));
    assertTrue(site.text(PAGE).contains("../fault/switch-stuck-closed.html"));
    assertTrue(site.text("index.html").contains(PAGE));
    assertTrue(site.text("a-z.html").contains(PAGE));
    assertTrue(site.text("search-index.js").contains("[\"sequence\",\"Heating cycle\""));
    assertTrue(site.text("search-index.js").contains("long"), "by what a display shows");
  }

  @Test
  void linksLeadToPlacesOnThePage() {
    List<String> ids = Elements.values(site.document(PAGE), "id").toList();
    assertEquals(ids.size(), ids.stream().distinct().count(), "each id once");
    for (String page : List.of(PAGE, "fault/switch-stuck-closed.html", "index.html", "a-z.html")) {
      Elements.values(site.document(page), "href")
          .map(href -> URI.create("site:/" + page).resolve(href))
          .forEach(
              to -> {
                String file = to.getPath().substring(1);
                assertTrue(site.files().containsKey(file), to.toString());
                if (file.equals(PAGE) && to.getFragment() != null) {
                  assertTrue(ids.contains(to.getFragment()), to.toString());
                }
              });
    }
  }

  @Test
  void theBookHasItWithTheSameWords() {
    String flowing = book.replaceAll("\\s+", " ");
    for (String words :
        List.of(
            "Sequences of operation",
            "first 40 s",
            "Longest opening of the release switch (25 s) is over",
            "counts Longest heatings in a row",
            "Timing diagram: The switch never opens, Software: at least 2.10",
            "7 Stop: LONG",
            "at least 27 min 50 s")) {
      assertTrue(flowing.contains(words), words);
    }
  }

  @Test
  void pagesAreValidHtml() throws IOException, SAXException {
    for (String page : List.of(PAGE, "fault/switch-stuck-closed.html", "index.html")) {
      assertEquals(List.of(), HtmlCheck.errors(temp.resolve("site").resolve(page)), page);
    }
  }

  @Test
  void publishingTwiceGivesEqualBytes() throws IOException {
    Published other = publish("other", Map.of());
    assertEquals(site.files().keySet(), other.files().keySet());
    site.files().forEach((path, bytes) -> assertArrayEquals(bytes, other.files().get(path), path));
  }

  @Test
  void textsOfATrainerAreNoMarkup() throws IOException {
    Published hostile =
        publish(
            "hostile",
            Map.of(
                "title: Heating\n", "title: \"<script>alert('1')</script> & \\\"Heating\\\"\"\n",
                "drain-valve: Drain valve", "drain-valve: \"<b>Drain</b> & valve\"",
                "display: FULL", "display: \"<i>\""));
    String page = hostile.text(PAGE);
    assertFalse(page.contains("<script>alert"));
    assertFalse(page.contains("<b>Drain"));
    assertFalse(page.contains("<i>"));
    assertTrue(page.contains("&lt;b&gt;Drain"), "shown as written");
  }

  @Test
  void aSequenceWithoutEndIsToldOfInADraft() throws IOException {
    KnowledgeBase kb =
        base(
            "restless",
            Map.of(
                "- { after: drain-time, go: heating }", "- { when: call is made, go: standby }"));
    Published draft =
        Published.publish(kb, Options.draft(List.of(), false), temp.resolve("restless"));
    assertTrue(draft.text(PAGE).contains("Phases follow each other without end on: All equipment"));
  }

  @Test
  void germanHasItsOwnWords() throws IOException {
    Published german = publish("german", Map.of("language: en", "language: de"));
    String page = german.text(PAGE);
    for (String words :
        List.of("Release switch öffnet", "die ersten 40", "Nebeneinander", "STOPP")) {
      assertTrue(page.contains(words), words);
    }
  }

  /** In every view, and without scrolling the page itself sideways. */
  @Test
  void noRuleOfAccessibilityIsBroken() {
    List<String> told = new ArrayList<>();
    try (Browser browser = Browser.open();
        BrowserContext context = browser.chromium().newContext()) {
      context.addInitScript(Axe.SCRIPT);
      Page page = context.newPage();
      page.navigate(temp.resolve("site").toUri() + PAGE);
      page.evaluate("document.fonts.ready.then(() => 1)");
      for (int width : new int[] {375, 1280}) {
        page.setViewportSize(width, 800);
        for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
          page.emulateMedia(
              new Page.EmulateMediaOptions().setMedia(Media.SCREEN).setColorScheme(scheme));
          Axe.check(page, width + " " + scheme, told);
          assertEquals(width, page.evaluate("document.documentElement.scrollWidth"));
        }
        page.emulateMedia(
            new Page.EmulateMediaOptions().setMedia(Media.PRINT).setColorScheme(ColorScheme.LIGHT));
        Axe.check(page, width + " print", told);
      }
    }
    assertEquals(List.of(), told);
  }
}
