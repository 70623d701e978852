package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.change.ChangedRegion;
import io.faultwright.change.SymptomChange;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.layout.Paper;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.page.Bulletin;
import io.faultwright.page.BulletinSection;
import io.faultwright.page.BulletinSection.Machines;
import io.faultwright.page.BulletinSheet;
import io.faultwright.page.ChangesSection;
import io.faultwright.page.ChangesSection.Change;
import io.faultwright.page.ChangesSection.ChangedComplaint;
import io.faultwright.page.Edition;
import io.faultwright.page.Fact;
import io.faultwright.page.Link;
import io.faultwright.page.Since;
import io.faultwright.page.SitePages;
import io.faultwright.pipeline.Compared;
import io.faultwright.pipeline.Comparing;
import io.faultwright.pipeline.Watch;
import io.faultwright.quantity.Decimals;
import io.faultwright.render.html.SiteHtml;
import io.faultwright.resolve.Resolver;
import io.faultwright.run.Runner;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BulletinTest {
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
        families:
          fell: { title: Fell }
          tarn: { title: Tarn }
        models:
          FL-1: { title: Fell one, family: fell, software: ["1.0", "2.0"] }
          FL-2: { title: Fell two, family: fell, software: ["1.0", "2.0"] }
          TA-1: { title: Tarn one, family: tarn, software: ["2.0"] }
      cautions:
        live: { signal: danger, text: Live parts will kill., covers: live-voltage }
        floor: { signal: notice, text: Water can mark the floor. }
      readings:
        fan-current: { ask: "What does the fan draw?", unit: A, range: 0 to 5, access: live-voltage }
        door: { ask: "Is the door shut?", values: yes/no }
      limits:
        fan-current:
          by: [family, software]
          rows:
            - { family: fell, software: "1.0", low: 1, high: 2 }
            - { family: fell, software: "2.0", low: 1, high: 2 }
            - { family: tarn, low: 1, high: 3 }
      faults:
        fan-stands: { title: Fan stands, remedy: [Replace it.], verify: [Look.], cautions: floor }
        fan-tight: { title: Fan is tight, remedy: [Oil it.], verify: [Look.] }
        door-open: { title: Door is open, remedy: [Shut it.], verify: [Look.] }
      symptoms:
        warm:
          title: Too warm
          rules:
            low: { when: { fan-current: below limits }, conclude: fan-stands, because: So. }
            right: { when: { fan-current: within limits }, escalate: hotline, because: So. }
            high: { when: { fan-current: above limits }, conclude: fan-tight, because: So. }
        wet:
          title: Too wet
          rules:
            open: { when: { door: no }, conclude: door-open, because: So. }
            shut: { when: { door: yes }, escalate: hotline, because: So. }
      translations:
        de: { Too warm: Zu warm, Fan is tight: Lüfter ist schwergängig }
      """;

  private static final String ONE_LIMIT =
      later(RULES)
          .replace(
              "{ family: fell, software: \"2.0\", low: 1, high: 2 }",
              "{ family: fell, software: \"2.0\", low: 1, high: 2.5 }");

  private static final String WORDS = later(RULES).replace("title: Fan stands", "title: Fan rests");
  private static final String REASON = "Fans of version 2.0 turn faster. ".repeat(9).strip();

  @TempDir Path folder;

  private static String later(String rules) {
    return rules.replace("revision: \"1\"", "revision: \"2\"").replace("2026-03-02", "2026-04-01");
  }

  private static KnowledgeBase kb(String rules) {
    return Resolver.resolve(new Sources(List.of(SourceFile.of("handbook.yaml", rules))));
  }

  private static Since since(String before, String after) {
    Compared compared = new Comparing(Watch.NOBODY).compare(kb(before), kb(after));
    return new Since(compared.before(), compared.shared(), compared.comparison());
  }

  private static Bulletin bulletin(String after) throws IOException {
    return bulletins(after).bulletin(since(RULES, after), List.of(REASON)).orElseThrow();
  }

  private static Bulletins bulletins(String after) {
    return new Bulletins(kb(after), Paper.A4, true);
  }

  private static BulletinSection section(String after) throws IOException {
    return BulletinSheet.of(kb(after), bulletin(after), true).content();
  }

  private static String text(SortedMap<String, byte[]> files, String name) {
    return new String(files.get(name), StandardCharsets.UTF_8);
  }

  /** Every region of the comparison, in its order, with the same tests and the same outcomes. */
  @Test
  void itNamesExactlyTheRegionsOfTheComparison() throws IOException {
    List<ChangedRegion> regions =
        since(RULES, ONE_LIMIT).comparison().symptoms().stream()
            .map(SymptomChange::alike)
            .flatMap(List::stream)
            .flatMap(List::stream)
            .toList();
    List<List<String>> expected =
        regions.stream()
            .map(
                region ->
                    Stream.concat(region.equipment().stream(), region.readings().stream())
                        .map(test -> test.accepts())
                        .sorted()
                        .toList())
            .toList();
    List<List<String>> told = new ArrayList<>();
    for (ChangedComplaint complaint : section(ONE_LIMIT).changes().changed()) {
      for (Change change : complaint.changes()) {
        change.where().forEach(where -> told.add(texts(complaint.always(), where)));
      }
    }
    assertEquals(List.of(List.of("2.0", "above 2 A and at most 2.5 A", "fell")), expected);
    assertEquals(List.of(List.of("2.0", "Fell", "above 2 A and at most 2.5 A")), told);
    Change change = section(ONE_LIMIT).changes().changed().get(0).changes().get(0);
    assertEquals("Fan is tight", change.before());
    assertEquals("Ask: hotline", change.now());
  }

  private static List<String> texts(List<Fact> always, List<Fact> where) {
    return Stream.concat(always.stream(), where.stream()).map(Fact::text).sorted().toList();
  }

  /** Drools is asked on every machine at tenths of an ampere, under the old and the new rules. */
  @Test
  void itNamesExactlyTheMachinesThatAnswerOtherwise() throws IOException {
    Runner old = new Runner(kb(RULES), RuleCompiler.compile(kb(RULES)));
    Runner current = new Runner(kb(ONE_LIMIT), RuleCompiler.compile(kb(ONE_LIMIT)));
    TreeSet<String> changed = new TreeSet<>();
    for (Build build : kb(ONE_LIMIT).equipment().builds()) {
      for (int tenths = 0; tenths <= 50; tenths++) {
        Value drawn = new Value.Number(Decimals.parse(tenths / 10 + "." + tenths % 10));
        Situation met = new Situation(build.facts(), new TreeMap<>(Map.of("fan-current", drawn)));
        if (!old.run("warm", met).verdict().equals(current.run("warm", met).verdict())) {
          changed.add(build.toString());
        }
      }
    }
    TreeSet<String> named = new TreeSet<>();
    for (Machines line : section(ONE_LIMIT).machines()) {
      for (String model : line.models()) {
        line.software().forEach(version -> named.add(model + " with software " + version));
      }
    }
    assertEquals(changed, named);
    assertEquals(
        List.of(new Machines("Fell", List.of("FL-1", "FL-2"), List.of("2.0"), false)),
        section(ONE_LIMIT).machines());
  }

  /** The other symptom is drawn as before; that the date changed makes no copy wrong. */
  @Test
  void itNamesTheCopiesThatAreDrawnOtherwise() throws IOException {
    BulletinSection.Copies copies = section(ONE_LIMIT).copies();
    assertFalse(copies.replace().isEmpty());
    for (Link copy : copies.replace()) {
      assertTrue(copy.text().startsWith("Too warm, "), copy.text());
    }
    assertTrue(
        copies.pages().contains(new BulletinSection.PageGroup("Complaints", List.of("Too warm"))),
        copies.toString());
    assertTrue(
        copies.replace().stream().anyMatch(copy -> copy.href().equals("charts/warm-1.svg")),
        copies.toString());
  }

  /** No caution where it is none; what is done otherwise has its own title. */
  @Test
  void workIsNamedByItsTitle() throws IOException {
    String gauge = RULES.replace("range: 0 to 5,", "range: 0 to 5, set-up: gauge,");
    String before =
        gauge.replace("faults:", "set-ups: { gauge: { title: Clamp on, minutes: 3 } }\nfaults:");
    String after = later(before).replace("Clamp on", "Clamp and zero");
    Bulletin told = bulletins(after).bulletin(since(before, after), List.of(REASON)).orElseThrow();
    assertEquals(
        List.of("Clamp and zero"),
        BulletinSheet.of(kb(after), told, true).content().changes().work().stream()
            .map(ChangesSection.WorkItem::name)
            .toList());
  }

  /** The current is measured at live parts; the notice is about no injury. */
  @Test
  void itShowsTheCautionsOfTheWork() throws IOException {
    assertEquals(List.of("Live parts will kill."), cautions(RULES, ONE_LIMIT));
  }

  private static List<String> cautions(String before, String after) throws IOException {
    Bulletin told = bulletins(after).bulletin(since(before, after), List.of(REASON)).orElseThrow();
    return BulletinSheet.of(kb(after), told, true).content().cautions().stream()
        .map(caution -> caution.text())
        .toList();
  }

  /** The change concerns the Fells alone. */
  @Test
  void thatARefrigerantBurnsIsSaidOnlyOfMachinesThatHaveIt() throws IOException {
    UnaryOperator<String> fellsBurn = rules -> charged(rules, "R-290", "R-404A");
    UnaryOperator<String> tarnsBurn = rules -> charged(rules, "R-404A", "R-290");
    String live = "Live parts will kill.";
    assertEquals(
        List.of("It can burn.", live),
        cautions(fellsBurn.apply(RULES), fellsBurn.apply(ONE_LIMIT)));
    assertEquals(List.of(live), cautions(tarnsBurn.apply(RULES), tarnsBurn.apply(ONE_LIMIT)));
  }

  private static String charged(String rules, String fells, String tarns) {
    return rules
        .replace(
            "family: fell, software: [", "family: fell, refrigerant: " + fells + ", software: [")
        .replace(
            "family: tarn, software: [", "family: tarn, refrigerant: " + tarns + ", software: [")
        .replace(
            "cautions:\n",
            "cautions:\n  flammable-refrigerant: { signal: danger, text: It can burn., covers:"
                + " refrigerant-circuit }\n")
        .replace(
            "access: live-voltage }",
            "access: live-voltage, cautions: [live, flammable-refrigerant] }");
  }

  @Test
  void itsTextFitsAMail() throws IOException {
    SortedMap<String, byte[]> files = bulletins(ONE_LIMIT).files(bulletin(ONE_LIMIT), false);
    assertEquals(
        List.of("bulletin.de.html", "bulletin.de.txt", "bulletin.html", "bulletin.txt"),
        List.copyOf(files.keySet()));
    for (String name : List.of("bulletin.txt", "bulletin.de.txt")) {
      assertTrue(text(files, name).lines().allMatch(line -> line.length() <= 78), name);
    }
    String english = text(files, "bulletin.txt");
    assertTrue(english.startsWith("DRAFT: Not released."), english);
    assertTrue(english.contains("FL-1, FL-2\n    only software 2.0\n"), english);
    assertTrue(english.contains("  Before: Fan is tight\n  Now: Ask: hotline\n"), english);
    assertTrue(english.replaceAll("\\s+", " ").contains(REASON), english);
    String german = text(files, "bulletin.de.txt");
    assertTrue(german.contains("Bisher: Lüfter ist schwergängig\n"), german);
    assertTrue(german.contains("Zu warm, Prüfplan"), german);
  }

  @Test
  void itsPagesAreValid() throws Exception {
    Bulletin bulletin = bulletin(ONE_LIMIT);
    Path preview = folder.resolve("preview.html");
    Files.write(preview, bulletins(ONE_LIMIT).files(bulletin, false).get("bulletin.html"));
    assertEquals(List.of(), HtmlCheck.errors(preview));
    Path released = Files.writeString(folder.resolve("bulletin.html"), released(bulletin));
    assertEquals(List.of(), HtmlCheck.errors(released));
  }

  /** The page of the site. */
  private static String released(Bulletin bulletin) {
    Edition edition =
        new Edition(
            new TreeMap<>(),
            List.of(),
            new TreeMap<>(),
            false,
            true,
            Optional.empty(),
            Optional.of(bulletin),
            List.of());
    return new SitePages(kb(ONE_LIMIT), edition)
        .all().stream()
            .filter(page -> page.path().equals("bulletin.html"))
            .map(new SiteHtml()::print)
            .findFirst()
            .orElseThrow();
  }

  @Test
  void theSameGivesTheSameBytes() throws IOException {
    SortedMap<String, byte[]> once = bulletins(ONE_LIMIT).files(bulletin(ONE_LIMIT), true);
    assertTrue(text(once, "bulletin.pdf").startsWith("%PDF"));
    bulletins(ONE_LIMIT)
        .files(bulletin(ONE_LIMIT), true)
        .forEach((name, content) -> assertTrue(Arrays.equals(once.get(name), content), name));
  }

  @Test
  void ofOtherWordsThereIsOnlyAList() throws IOException {
    Since since = since(RULES, WORDS);
    assertTrue(bulletins(WORDS).bulletin(since, List.of(REASON)).isEmpty());
    SortedMap<String, byte[]> files = bulletins(WORDS).changedTexts(since);
    assertEquals(List.of("changed-texts.de.txt", "changed-texts.txt"), List.copyOf(files.keySet()));
    String list = text(files, "changed-texts.txt");
    assertTrue(list.contains("  - fault fan-stands: title\n"), list);
    assertFalse(list.contains("revision: "), list);
  }

  /** No answer changes, yet people work otherwise: that is more than other words. */
  @Test
  void whereTheWorkChangesThereIsABulletin() throws IOException {
    String after = later(RULES).replace("remedy: [Oil it.]", "remedy: [Isolate it. Oil it.]");
    BulletinSection told = section(after);
    assertEquals(List.of(), told.changes().changed());
    assertEquals("Fan is tight", told.changes().work().get(0).name());
    assertEquals(2, told.machines().size());
  }
}
