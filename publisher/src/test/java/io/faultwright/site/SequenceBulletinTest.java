package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.layout.Paper;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.Bulletin;
import io.faultwright.page.BulletinSection;
import io.faultwright.page.BulletinSection.Machines;
import io.faultwright.page.BulletinSection.PageGroup;
import io.faultwright.page.BulletinSheet;
import io.faultwright.page.ChangesSection.ChangedSequence;
import io.faultwright.page.ChangesSection.Turn;
import io.faultwright.page.Edition;
import io.faultwright.page.Since;
import io.faultwright.page.SitePages;
import io.faultwright.pipeline.Compared;
import io.faultwright.pipeline.Comparing;
import io.faultwright.pipeline.Watch;
import io.faultwright.render.html.SiteHtml;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.SAXException;

/** What the field is told where a sequence of operation changed and no answer did. */
class SequenceBulletinTest {
  private static final String RULES =
      """
      handbook:
        title: Small
        maker: Brantmoor Cold
        revision: "1"
        date: 2026-03-02
        language: en
        translated-to: de
        disclaimer: Made up.
      equipment:
        families: { fell: { title: Fell }, tarn: { title: Tarn } }
        options:
          defrost: { title: Defrost, values: { gas: Hot gas, none: Without } }
        models:
          FL-1: { family: fell, options: { defrost: gas }, software: ["1.0", "2.0"] }
          FL-2: { family: fell, options: { defrost: gas }, software: ["2.0"] }
          TA-1: { family: tarn, options: { defrost: none }, software: ["2.0"] }
      readings:
        door: { ask: "Is the door shut?", values: yes/no }
      faults:
        door-open: { title: Door is open, remedy: [Shut it.], verify: [Look.] }
      symptoms:
        wet:
          title: Too wet
          rules:
            open: { when: { door: no }, conclude: door-open, because: So. }
            shut: { when: { door: yes }, escalate: hotline, because: So. }
      sequences:
        defrosting:
          title: Defrost & drip
          applies: { defrost: gas }
          outputs: { pump: Pump, valve: "Valve < 2" }
          inputs: { call: Defrost call }
          times:
            drip-time:
              title: Drip time
              lasts:
                - { applies: { software: "1.0" }, lasts: 3 min }
                - { applies: { software: "2.0" }, lasts: 4 min }
          start: rest
          phases:
            rest: { title: Rest, display: REST, next: [{ when: call, go: drip }] }
            drip: { title: Drip, display: DRIP, on: [valve], next: [{ after: drip-time, go: rest }] }
          courses:
            good: { title: In good order, lasts: 10 min, events: [call at 1:00] }
      translations:
        de: { Drip time: Abtropfzeit, Drip: Abtropfen, Pump: Pumpe }
      """;

  @TempDir Path folder;

  private static KnowledgeBase kb(String rules) {
    return Resolver.resolve(new Sources(List.of(SourceFile.of("handbook.yaml", rules))));
  }

  private static Optional<Bulletin> bulletin(String before, String after) throws IOException {
    Compared compared = new Comparing(Watch.NOBODY).compare(kb(before), kb(after));
    Since since = new Since(compared.before(), compared.shared(), compared.comparison());
    return new Bulletins(kb(after), Paper.A4, true).bulletin(since, List.of());
  }

  private static BulletinSection section(String after) throws IOException {
    return BulletinSheet.of(kb(after), bulletin(RULES, after).orElseThrow(), false).content();
  }

  private static List<Turn> turns(String from, String to) throws IOException {
    assertTrue(RULES.contains(from), from);
    List<ChangedSequence> changed = section(RULES.replace(from, to)).changes().sequences();
    assertEquals(
        List.of("Defrost & drip"), changed.stream().map(one -> one.link().text()).toList());
    return changed.get(0).turns();
  }

  private static final String SHOWN = "What the display says, and for how long";

  @Test
  void itTellsTheOldAndTheNewTimeAndForWhichMachines() throws IOException {
    assertEquals(
        List.of(
            new Turn("Drip time", "4\u00A0min", "5\u00A0min", "Family: Fell; Software: 2.0"),
            new Turn(SHOWN, "", "Not as before: In good order", "Family: Fell; Software: 2.0")),
        turns("lasts: 4 min", "lasts: 5 min"));
    BulletinSection told = section(RULES.replace("lasts: 4 min", "lasts: 5 min"));
    assertEquals(
        List.of(
            new Machines("Fell", List.of("FL-1"), List.of("2.0"), false),
            new Machines("Fell", List.of("FL-2"), List.of("2.0"), true)),
        told.machines());
    assertEquals(
        List.of(new PageGroup("Sequences of operation", List.of("Defrost & drip"))),
        told.copies().pages());
    assertEquals(List.of(), told.changes().work());
  }

  @Test
  void itTellsWhatAPhaseDoesOtherwise() throws IOException {
    assertEquals(
        new Turn("Drip: Display", "DRIP", "DROP", "Family: Fell"),
        turns("display: DRIP", "display: DROP").get(0));
    assertEquals(
        List.of(
            new Turn(
                "Drip: Outputs that are on",
                "Valve < 2",
                "Valve < 2; Pump, first 20\u00A0s",
                "Family: Fell")),
        turns("on: [valve]", "on: [valve, pump until 20 s]"));
    assertEquals(
        new Turn(
            "Rest: What ends it, and what follows",
            "Defrost call → Drip",
            "Defrost call, not before 10\u00A0s → Drip",
            "Family: Fell"),
        turns("{ when: call, go: drip }", "{ when: call, after: 10 s, go: drip }").get(0));
    assertEquals(
        List.of(new Turn("Never on together", "–", "Pump + Valve < 2", "Family: Fell")),
        turns("    start: rest", "    never-together: [[pump, valve]]\n    start: rest"));
  }

  @Test
  void itTellsWhatCameAndWent() throws IOException {
    assertEquals(
        new Turn("New phase: Wait", "", "", "Family: Fell"),
        turns(
                "go: rest }] }",
                "go: wait }] }\n      wait: { title: Wait, next: [{ after: 5 s, go: rest }] }")
            .get(0));
    assertEquals(
        List.of(new Turn("New for these machines", "", "", "Family: Tarn")),
        turns("    applies: { defrost: gas }\n", ""));
    String none = RULES.replaceAll("(?s)sequences:.*(?=translations:)", "");
    Bulletin came = bulletin(none, RULES).orElseThrow();
    assertEquals(
        List.of(new Turn("New", "", "", "Family: Fell")),
        BulletinSheet.of(kb(RULES), came, false).content().changes().sequences().get(0).turns());
    Bulletin went = bulletin(RULES, none).orElseThrow();
    assertEquals(
        List.of(new Turn("Gone", "", "", "Family: Fell")),
        BulletinSheet.of(kb(none), went, false).content().changes().sequences().get(0).turns());
  }

  /** Translated machines are the same machines. */
  @Test
  void itReadsInEachLanguageAndIsEscaped() throws IOException, SAXException {
    String after = RULES.replace("lasts: 4 min", "lasts: 5 min");
    SortedMap<String, byte[]> files =
        new Bulletins(kb(after), Paper.A4, true).files(bulletin(RULES, after).orElseThrow(), false);
    String text = text(files, "bulletin.de.txt");
    assertTrue(
        text.contains(
            """
              Abtropfzeit
                Für wen: Baureihe: Fell; Software: 2.0
                Bisher: 4 min
                Jetzt: 5 min
            """
                .indent(0)),
        text);
    assertTrue(text.contains("FL-1\n"), text);
    assertTrue(text.contains("WARNUNG: Die Anlage läuft von selbst an."), text);
    String page = text(files, "bulletin.html");
    Path file = folder.resolve("bulletin.html");
    Files.writeString(file, page);
    assertEquals(List.of(), HtmlCheck.errors(file));
    assertTrue(page.contains("Defrost &amp; drip"), page);
    assertTrue(page.indexOf("The machine starts by itself.") < page.indexOf("Drip time"), page);
  }

  /** No answer changed, and yet something did. */
  @Test
  void thePageOfWhatChangedTellsItToo() throws IOException, SAXException {
    String after = RULES.replace("lasts: 4 min", "lasts: 5 min");
    Edition edition =
        new Edition(
            new TreeMap<>(),
            List.of(),
            new TreeMap<>(),
            false,
            true,
            Optional.of(bulletin(RULES, after).orElseThrow().since()));
    String page =
        new SitePages(kb(after), edition)
            .all().stream()
                .filter(one -> one.path().equals("what-changed.html"))
                .map(new SiteHtml()::print)
                .findFirst()
                .orElseThrow();
    Path file = Files.writeString(folder.resolve("what-changed.html"), page);
    assertEquals(List.of(), HtmlCheck.errors(file));
    assertTrue(page.contains("<dt>Now</dt><dd>5\u00A0min</dd>"), page);
    assertTrue(page.contains("href=\"sequence/defrosting.html\""), page);
    assertFalse(page.contains("No change in meaning"), page);
  }

  private static String text(SortedMap<String, byte[]> files, String name) {
    return new String(files.get(name), StandardCharsets.UTF_8).replace('\u00A0', ' ');
  }

  @Test
  void otherWordsForTheSameAreNoReasonForABulletin() throws IOException {
    assertFalse(bulletin(RULES, RULES.replace("lasts: 4 min", "lasts: 240 s")).isPresent());
    assertFalse(bulletin(RULES, RULES.replace("title: Rest,", "title: Idle,")).isPresent());
    assertTrue(bulletin(RULES, RULES.replace("lasts: 4 min", "lasts: 5 min")).isPresent());
  }
}
