package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.Finding;
import io.faultwright.flow.Demos;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.pipeline.Checked;
import io.faultwright.pipeline.Pipeline;
import io.faultwright.pipeline.Scope;
import io.faultwright.pipeline.Watch;
import io.faultwright.run.Runner;
import io.faultwright.site.Situations.Told;
import io.faultwright.syntax.FolderReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the guided page says in a browser is what the engine says, Drools and all. */
class GuidedParityTest {
  private static final Path SPECIMENS = Path.of("..", "engine", "src", "test", "resources");

  @TempDir static Path temp;
  private static final List<String> COMPLAINTS = Collections.synchronizedList(new ArrayList<>());

  private static Browser browser;
  private static Page page;

  @BeforeAll
  static void open() {
    browser = Browser.open();
    page = browser.chromium().newPage();
    page.onConsoleMessage(message -> COMPLAINTS.add(message.text()));
    page.onPageError(COMPLAINTS::add);
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @Test
  void everyCaseAndTwoThousandRandomSituations() throws IOException {
    for (KnowledgeBase kb : Demos.all()) {
      List<Told> told = new ArrayList<>();
      kb.cases().values().forEach(one -> told.add(new Told(one.id(), one.symptom(), one.given())));
      assertTrue(told.size() > 10);
      told.addAll(Situations.of(kb, kb.symptoms().size() > 5 ? 1900 : 100, 20261130));
      Path site = Files.createTempDirectory(temp, "site");
      GuidedPage.publish(kb, symptom -> Demos.charts(kb, symptom), false, site);
      compare(kb, told, site);
    }
  }

  @Test
  void everyWitnessOfTheSpecimens() throws IOException {
    int witnesses = 0;
    for (Path folder : specimens()) {
      Checked checked = new Pipeline(Scope.ALL, Watch.NOBODY).check(FolderReader.read(folder));
      KnowledgeBase kb = checked.knowledge();
      List<Situation> shown =
          checked.report().findings().stream()
              .map(Finding::witness)
              .flatMap(Optional::stream)
              .toList();
      List<Told> told = new ArrayList<>();
      shown.forEach(
          one -> kb.symptoms().keySet().forEach(id -> told.add(new Told(folder + "", id, one))));
      if (!told.isEmpty()) {
        Path site = Files.createTempDirectory(temp, "site");
        GuidedPage.publish(kb, true, site);
        compare(kb, told, site);
        witnesses += shown.size();
      }
    }
    assertTrue(witnesses > 30, "only " + witnesses);
  }

  private static List<Path> specimens() throws IOException {
    try (Stream<Path> folders =
        Stream.concat(
            Stream.of(SPECIMENS.resolve("specimens")), Files.list(SPECIMENS.resolve("findings")))) {
      return folders
          .filter(folder -> Files.isRegularFile(folder.resolve("handbook.yaml")))
          .sorted()
          .toList();
    }
  }

  private static void compare(KnowledgeBase kb, List<Told> situations, Path site)
      throws IOException {
    // What the page says is compared, not how it looks: nothing need be laid out.
    Files.writeString(site.resolve("style.css"), "body { display: none; }");
    Runner runner = new Runner(kb, RuleCompiler.compile(kb));
    List<String> said = fresh(site).said(situations);
    for (int i = 0; i < situations.size(); i++) {
      Told told = situations.get(i);
      String expected = GuidedPage.said(runner.verdict(told.symptom(), told.situation()));
      assertEquals(expected, said.get(i), told.name() + " " + GuidedPage.address(told));
    }
    assertEquals(List.of(), List.copyOf(COMPLAINTS));
  }

  /** As a browser has it that never saw the page before. */
  private static GuidedPage fresh(Path site) {
    COMPLAINTS.clear();
    GuidedPage.open(page, site);
    page.evaluate("localStorage.clear()");
    return GuidedPage.open(page, site);
  }
}
