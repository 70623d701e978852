package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Guide;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.source.Place;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;

class SiteTest {
  @TempDir static Path temp;
  private static Published site;

  @BeforeAll
  static void publish() throws IOException {
    Finding finding =
        Finding.of(
                FindingKind.DEAD_RULE,
                new Place("symptoms.yaml", 3, 1, 1),
                "never fires",
                "drop it")
            .in("ice-left", List.of("fan"));
    site =
        Published.publish(
            SampleBook.plain(),
            SampleChanges.draft(SampleBook.plain(), List.of(finding), false),
            temp.resolve("site"));
  }

  @Test
  void hasAPageForEverything() {
    assertEquals(
        List.of(
            "a-z.html",
            "bulletin.html",
            "diagnose.html",
            "equipment.html",
            "fault/fan-stuck.html",
            "fault/valve-not-powered.html",
            "fault/valve-restricted.html",
            "findings.html",
            "guide/gauges.html",
            "guide/welcome.html",
            "index.html",
            "parts.html",
            "reading/ambient-temperature.html",
            "reading/discharge-pressure.html",
            "reading/fan-running.html",
            "reading/ice-after-defrost.html",
            "reading/valve-voltage.html",
            "safety.html",
            "search.html",
            "symptom/ice-left.html",
            "symptom/room-too-warm.html",
            "what-changed.html"),
        site.pages().toList());
    assertTrue(site.files().containsKey("charts/ice-left-1.svg"));
    assertTrue(site.files().containsKey("style.css"));
  }

  @TestFactory
  List<DynamicTest> pagesAreValidHtml() {
    return site.pages()
        .map(
            path ->
                DynamicTest.dynamicTest(
                    path,
                    () ->
                        assertEquals(
                            List.of(), HtmlCheck.errors(temp.resolve("site").resolve(path)))))
        .toList();
  }

  @TestFactory
  List<DynamicTest> linksLeadSomewhere() {
    return site.pages().map(path -> DynamicTest.dynamicTest(path, () -> checkLinks(path))).toList();
  }

  private static void checkLinks(String path) {
    Document page = site.document(path);
    List<String> addresses =
        List.of("href", "src").stream()
            .flatMap(attribute -> Elements.values(page, attribute))
            .toList();
    assertFalse(addresses.isEmpty());
    addresses.stream()
        .filter(address -> !address.startsWith("https://example.org/"))
        .forEach(address -> checkLink(path, address));
  }

  private static void checkLink(String path, String address) {
    URI target = URI.create("site:/" + path).resolve(address);
    String file = target.getPath().substring(1);
    assertTrue(site.files().containsKey(file), path + " links to " + address);
    if (file.equals("diagnose.html")
        && String.valueOf(target.getFragment()).startsWith("symptom=")) {
      String symptom = target.getFragment().substring("symptom=".length());
      assertTrue(site.files().containsKey("guided/symptom-" + symptom + ".js"), address);
    } else if (target.getFragment() != null) {
      boolean found =
          Elements.values(site.document(file), "id").anyMatch(target.getFragment()::equals);
      assertTrue(found, path + " links to " + address);
    }
  }

  @Test
  void cautionsStandBeforeTheStep() {
    String page = site.text("fault/valve-restricted.html");
    int caution = page.indexOf("Gas under pressure");
    int first = page.indexOf("Isolate the unit");
    int second = page.indexOf("Mains voltage kills");
    int third = page.indexOf("Evacuate and recharge");
    assertTrue(caution > 0 && caution < first, "the caution comes before the first step");
    assertTrue(second > first && second < third, "and the next one before the step it belongs to");
    String reading = site.text("reading/valve-voltage.html");
    assertTrue(reading.indexOf("Mains voltage") < reading.indexOf("Wait two minutes"));
  }

  @Test
  void onlySignalWordsAboutPeopleCarryTheAlertSymbol() {
    String page = site.text("safety.html");
    for (String word : List.of("DANGER", "WARNING", "CAUTION")) {
      assertTrue(page.matches("(?s).*</svg>\\s*<span>" + word + "</span>.*"), word);
    }
    assertTrue(page.contains("<p class=\"signal\"><span>NOTICE</span>"), "none for NOTICE");
  }

  @Test
  void everyPageIsMarkedAsDraftAndDefersToLocalCodes() {
    site.pages()
        .map(site::text)
        .forEach(
            page -> {
              assertTrue(page.contains("<b>DRAFT</b>"));
              assertTrue(page.contains("Local codes and licensed practice come first."));
              assertTrue(page.contains("Revision 7, 2026-03-02"));
            });
    assertTrue(site.text("findings.html").contains("dead-rule"));
    assertTrue(site.text("charts/ice-left-1.svg").contains("DRAFT"));
  }

  @Test
  void aReleaseIsNoDraft() throws IOException {
    Published release =
        Published.publish(SampleBook.plain(), Options.release(false), temp.resolve("release"));
    assertFalse(release.files().containsKey("findings.html"));
    release.pages().map(release::text).forEach(page -> assertFalse(page.contains("DRAFT")));
  }

  /** Every page runs the script that lets devices keep it; few run more. */
  @Test
  void carriesNoScriptWhereNoneIsNeededAndAsksForNothingFromOutside() {
    for (String path : site.pages().toList()) {
      Document page = site.document(path);
      List<String> scripts =
          Elements.of(page).stream()
              .filter(element -> element.getTagName().equals("script"))
              .map(element -> element.getAttribute("src").replace("../", ""))
              .toList();
      assertEquals(
          Map.of(
                  "index.html", List.of("offline-words.js", "offline.js", "search.js"),
                  "search.html",
                      List.of("offline-words.js", "offline.js", "search.js", "search-index.js"),
                  "diagnose.html", List.of("offline-words.js", "offline.js", "diagnose.js"))
              .getOrDefault(path, List.of("offline-words.js", "offline.js")),
          scripts,
          path);
      assertTrue(site.text(path).contains("script-src 'self'; worker-src 'self'"), path);
      assertEquals(0, page.getElementsByTagName("style").getLength(), path);
      assertTrue(Elements.values(page, "style").findAny().isEmpty(), path);
      assertTrue(Elements.values(page, "src").noneMatch(src -> src.contains(":")), path);
    }
    assertFalse(site.text("style.css").contains("url(\"http"));
  }

  @Test
  void publishingTwiceGivesEqualBytes() throws IOException {
    KnowledgeBase kb = SampleBook.plain();
    Published one = Published.publish(kb, Options.release(true), temp.resolve("one"));
    Published two = Published.publish(kb, Options.release(true), temp.resolve("two"));
    assertEquals(one.files().keySet(), two.files().keySet());
    one.files()
        .forEach(
            (path, bytes) ->
                assertTrue(java.util.Arrays.equals(bytes, two.files().get(path)), path));
  }

  @Test
  void aGuideThatLinksToNothingIsRefusedWithItsPlace() {
    KnowledgeBase kb = withGuide("# Bad\n\nSee [this](fault:gone).");
    Path to = temp.resolve("bad");
    Unreadable refused =
        assertThrows(
            Unreadable.class,
            () -> new SitePublisher().publish(kb, new TreeMap<>(), Options.release(false), to));
    assertEquals("[guides/bad.md:3:5]", refused.problems().get(0).places().toString());
    assertFalse(Files.exists(to), "nothing is written");
  }

  @Test
  void aDraftIsPublishedWithItsDanglingLinks() throws IOException {
    Summary summary =
        new SitePublisher()
            .publish(
                withGuide("[this](fault:gone)"),
                new TreeMap<>(),
                Options.draft(List.of(), false),
                temp.resolve("bad-draft"));
    assertEquals(1, summary.problems().size());
  }

  private static KnowledgeBase withGuide(String text) {
    KnowledgeBase kb = SampleBook.plain();
    SortedMap<String, Guide> guides = new TreeMap<>(kb.guides());
    guides.put("bad", new Guide("bad", new Place("guides/bad.md", 1, 1, 1), "Bad", text));
    return new KnowledgeBase(
        kb.handbook(),
        kb.equipment(),
        kb.readings(),
        kb.limits(),
        kb.faults(),
        kb.symptoms(),
        kb.nevers(),
        kb.cases(),
        kb.cautions(),
        kb.parts(),
        guides,
        kb.setUps(),
        kb.charts(),
        kb.sequences(),
        kb.wordbook());
  }
}
