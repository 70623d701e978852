package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.layout.Paper;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.BookPages;
import io.faultwright.page.Edition;
import io.faultwright.page.Page;
import io.faultwright.page.SequenceSection;
import io.faultwright.page.SequenceSection.CourseItem;
import io.faultwright.page.SequenceSection.Exit;
import io.faultwright.page.SequenceSection.PhaseRow;
import io.faultwright.page.SequenceSection.ShownCell;
import io.faultwright.page.SequenceSection.TimeRow;
import io.faultwright.page.SitePages;
import io.faultwright.render.html.BookHtml;
import io.faultwright.render.html.SiteHtml;
import io.faultwright.render.pdf.PdfPrinter;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** What the tables of a sequence of operation say, on one that uses all that may be written. */
class SequenceTablesTest {
  private static final String YAML =
      """
      handbook: { title: T, maker: M, revision: "1", date: 2026-01-01, language: en, disclaimer: D }
      equipment:
        families: { fell: { title: Fell }, tarn: { title: Tarn } }
        options:
          controller:
            title: Controller
            values: { k1: { title: K1, software: [1.4] }, k2: { title: K2, software: [3.0] }, k3: K3 }
        models:
          FL-1: { family: fell, options: { controller: k1 } }
          FL-2: { family: fell, options: { controller: k2 } }
          TN-1: { family: tarn, options: { controller: k3 } }
      sequences:
        defrost:
          title: Defrost
          applies: { family: fell }
          outputs: { a: Compressor, b: Fan, c: Valve, d: Heater, e: Drain heater, f: Alarm, g: Lamp }
          inputs:
            door: { title: Door, states: [closed, open] }
            mode: { title: Mode, states: { run: Run, wash: Wash, rest: Rest }, at-start: run }
            key: Key
          times:
            long: { title: Longest defrost, lasts: [ { applies: { controller: k1 }, lasts: 90 min } ] }
          timers:
            whole: { title: Whole cycle, lasts: 3 h, during: [warm, drip] }
          counters:
            turns: { title: Turns, limit: [ { applies: { controller: k1 }, limit: 3 }, { applies: { controller: k2 }, limit: 2 } ], go: out }
            seen: Doors seen
          start: warm
          phases:
            warm:
              title: Warming
              on: [a, b from 10 s, { output: c, from: 10 s, until: 20 s }, d until long]
              next:
                - { when: [door opens, mode is run], after: 30 s, go: drip, count: [turns, seen] }
                - { when: key, go: drip, applies: { controller: k2 } }
                - { when: mode becomes wash, go: drip }
                - { after: long, go: drip }
                - { after: whole, go: out }
            drip: { title: Dripping, about: Water runs off., display: DR, next: [ { after: 90 s, go: warm } ] }
            out: { title: Out, stop: yes, last: yes, on: [f] }
          courses:
            doors:
              title: The door opens again and again
              lasts: 4 h
              events:
                - door opens 40 s into warm
                - door closes 10 s into drip
                - key at 3:30:00
                - mode becomes wash at 3:40:00
      """;

  private static final KnowledgeBase KB = read(YAML);

  private static final SequenceSection SECTION = section(KB);

  private static KnowledgeBase read(String yaml) {
    return Resolver.resolve(new Sources(List.of(SourceFile.of("handbook.yaml", yaml))));
  }

  private static Edition edition() {
    return new Edition(new TreeMap<>(), List.of(), new TreeMap<>(), false, true, Optional.empty());
  }

  private static SequenceSection section(KnowledgeBase kb) {
    return new SitePages(kb, edition())
        .all().stream()
            .map(Page::content)
            .filter(SequenceSection.class::isInstance)
            .map(SequenceSection.class::cast)
            .findFirst()
            .orElseThrow();
  }

  private static String plain(Object text) {
    return text.toString().replace('\u00A0', ' ');
  }

  private static String exit(Exit exit) {
    return plain(exit.when() + " " + exit.go().text() + " " + exit.notes() + " " + exit.applies());
  }

  @Test
  void whatEndsAPhaseIsSaidInOneWayForEachThingThatMayBeWritten() {
    List<String> exits =
        SECTION.phases().get(0).exits().stream().map(SequenceTablesTest::exit).toList();
    assertEquals(
        """
        [Door opens, while Mode: Run, not before 30 s] Dripping \
        [counts Doors seen, counts Turns; at 3 or 2 → Out]\s
        [Key] Dripping [] Controller: K2
        [Mode changes to: Wash] Dripping []\s
        [Longest defrost (90 min) is over] Dripping []\s
        [Whole cycle (3 h) is over] Out []\s""",
        String.join("\n", exits));
  }

  @Test
  void outputsAreMarkedForThePartOfThePhaseInWhichTheyAreOn() {
    PhaseRow warm = SECTION.phases().get(0);
    List<String> when =
        warm.cells().stream()
            .map(cell -> cell.on().stream().map(part -> plain(part.when())).toList())
            .map(Object::toString)
            .toList();
    assertEquals("[[], [from 10 s], [10 s to 20 s], [first 90 min], [], [], []]", when.toString());
    assertEquals(1, warm.cells().get(0).on().size(), "on from beginning to end");
    assertEquals(0, warm.cells().get(6).on().size(), "never on");
    assertEquals(Optional.empty(), warm.display());
    assertEquals("Nothing leads on.", SECTION.phases().get(2).end());
  }

  @Test
  void timesTimersAndLimitsStandInTheColumnOfTheirMachines() {
    SequenceSection.TimesTable table = SECTION.times().get(0);
    assertEquals(List.of("Controller: K1", "Controller: K2"), table.machines());
    assertFalse(table.set() || table.read(), "nothing can be set");
    List<String> rows = table.rows().stream().map(SequenceTablesTest::row).toList();
    assertEquals(
        List.of(
            "Longest defrost ()[90 min, –]",
            "Whole cycle (runs through Warming, Dripping)[3 h, 3 h]",
            "Turns (then follows Out)[3 times, 2 times]"),
        rows);
  }

  private static String row(TimeRow row) {
    return plain(row.title() + " (" + row.note() + ")" + row.values());
  }

  @Test
  void onlyMachinesThatWorkSoAreShown() {
    assertFalse(SECTION.toString().contains("K3"), "it has another controller");
    assertEquals("Family", SECTION.applies().get(0).subject().orElseThrow().text());
  }

  @Test
  void aPhaseWithoutADisplayIsACellOfItsOwn() {
    CourseItem course = SECTION.courses().get(0);
    List<List<ShownCell>> rows = course.tables().get(0).rows();
    assertEquals("", rows.get(0).get(0).shows());
    assertEquals("Warming", rows.get(0).get(0).phases());
    assertEquals(
        "0:00:00 – 0:00:40", plain(rows.get(0).get(0).span()), "with hours, as to the end");
    ShownCell stop = rows.get(5).get(0);
    ShownCell stopped = rows.get(3).get(1);
    assertTrue(stop.stop() && stopped.stop(), "the third time on one, the second on the other");
    assertTrue(stopped.differs());
    assertFalse(rows.get(5).get(1).differs(), "nothing is shown any more, so nothing differs");
  }

  @Test
  void diagramsShowEachStateThatComesAndPushes() {
    String drawn = SECTION.courses().get(0).timings().get(0).svg().markup();
    for (String lane : List.of(">Door is open<", ">Mode: Wash<", ">Key<", "class=\"push\"")) {
      assertTrue(drawn.contains(lane), lane);
    }
    assertFalse(drawn.contains("Mode: Rest"), "it does not come");
  }

  @Test
  void manyOutputsGoByLettersOnPaper() {
    String book = book(KB);
    assertTrue(book.contains("<b>G</b> Lamp"), "what a letter means");
    assertTrue(
        book.contains("<th scope=\"col\" class=\"output\" style=\"width:10mm\">G</th>"),
        "its column");
  }

  /** Paper has no hyphens: a column would break a word that is too long anywhere. */
  @Test
  void outputsWithLongWordsGoByLettersOnPaper() {
    String few = YAML.replace("e: Drain heater, f: Alarm, g: Lamp", "e: Drain heater, f: Alarm");
    assertFalse(book(read(few)).contains("phases lettered"));
    assertTrue(
        book(read(few.replace("d: Heater", "d: Abtauheizungen")))
            .contains("<b>D</b> Abtauheizungen"));
  }

  private static String book(KnowledgeBase kb) {
    return new BookHtml().print(new BookPages(kb, edition(), Paper.A4).book(), Paper.A4);
  }

  /** Twelve outputs leave what ends a phase more than half of its line. */
  @Test
  void manyOutputsLeaveRoomOnPaper() throws IOException {
    StringBuilder outputs = new StringBuilder();
    for (int i = 1; i <= 5; i++) {
      outputs.append(", more").append(i).append(": One more");
    }
    KnowledgeBase kb = read(YAML.replace(", g: Lamp", ", g: Lamp" + outputs));
    byte[] pdf = new PdfPrinter().print(book(kb), "2026-01-01").bytes();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = plain(new PDFTextStripper().getText(document));
      assertTrue(text.contains("Door opens, while Mode: Run, not before"), text);
    }
  }

  @Test
  void aHandbookOfSequencesAloneAsksForNoComplaint() {
    String start =
        new SitePages(KB, edition())
            .all().stream()
                .filter(page -> page.path().equals("index.html"))
                .map(new SiteHtml()::print)
                .findFirst()
                .orElseThrow();
    assertTrue(start.contains("href=\"sequence/defrost.html\""), start);
    assertFalse(start.contains("What is the complaint?"), start);
    assertFalse(start.contains("class=\"begin\""), start);
  }

  @Test
  void whatAllShareIsNamedByWhatTheSequenceAppliesTo() {
    KnowledgeBase kb = read(YAML.replace("applies: { family: fell }", "applies: { model: FL-1 }"));
    SequenceSection it = section(kb);
    assertEquals(List.of("Model: FL-1"), it.times().get(0).machines());
    assertTrue(
        it.courses().stream()
            .flatMap(course -> course.timings().stream())
            .allMatch(timing -> timing.title().endsWith(", Model: FL-1")));
  }
}
