package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import io.faultwright.flow.Demos;
import io.faultwright.model.KnowledgeBase;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The rules of WCAG 2.2 AA that a program can check, on every kind of page. */
class AccessibilityTest {
  private static final List<String> RULES =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

  /** A page of each kind, with the fragment that brings a script's screen. */
  private static final List<String> SAMPLE =
      List.of(
          "index.html",
          "equipment.html",
          "safety.html",
          "parts.html",
          "a-z.html",
          "findings.html",
          "what-changed.html",
          "search.html#q=coil",
          "symptom/ice-left.html",
          "fault/valve-restricted.html",
          "reading/discharge-pressure.html",
          "guide/gauges.html",
          "diagnose.html");

  @TempDir static Path temp;
  private static Browser browser;

  @BeforeAll
  static void publish() throws IOException {
    browser = Browser.open();
    KnowledgeBase sample = new SampleBook(text -> text).build();
    Published.publish(
        sample, SampleChanges.draft(sample, List.of(), false), temp.resolve("sample"));
    KnowledgeBase dishwashers = Demos.all().get(1);
    Published.publish(dishwashers, Options.release(false), temp.resolve("dishwashers"));
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  /** How a page is looked at. */
  private record View(int width, ColorScheme scheme, Media media) {}

  private static Stream<View> views() {
    return Stream.of(375, 1280)
        .flatMap(
            width ->
                Stream.of(
                    new View(width, ColorScheme.LIGHT, Media.SCREEN),
                    new View(width, ColorScheme.DARK, Media.SCREEN),
                    new View(width, ColorScheme.LIGHT, Media.PRINT)));
  }

  @TestFactory
  Stream<DynamicTest> noPageBreaksARule() {
    return views().map(view -> DynamicTest.dynamicTest(view.toString(), () -> check(view)));
  }

  private static void check(View view) {
    com.microsoft.playwright.Browser.NewContextOptions options =
        new com.microsoft.playwright.Browser.NewContextOptions()
            .setViewportSize(view.width, 800)
            .setColorScheme(view.scheme);
    try (BrowserContext context = browser.chromium().newContext(options)) {
      List<String> told = new ArrayList<>();
      Page page = context.newPage();
      page.emulateMedia(new Page.EmulateMediaOptions().setMedia(view.media));
      for (String path : SAMPLE) {
        page.navigate(temp.resolve("sample").toUri() + path);
        page.evaluate("document.fonts.ready.then(() => 1)");
        clean(page, path, told);
      }
      guided(page, told);
      assertEquals(List.of(), told);
    }
  }

  /** The screens of a diagnosis: machine, complaint, checks, result, handing over. */
  private static void guided(Page page, List<String> told) {
    String start = temp.resolve("dishwashers").toUri() + "diagnose.html";
    for (String fragment : GuidedScreens.OF_THE_DISHWASHERS) {
      page.navigate("about:blank");
      page.navigate(start + fragment);
      page.waitForFunction(
          "() => !['', 'loading'].includes(document.getElementById('guided').dataset.status)");
      clean(page, fragment, told);
    }
  }

  private static void clean(Page page, String what, List<String> told) {
    for (Rule rule : new AxeBuilder(page).withTags(RULES).analyze().getViolations()) {
      told.add(what + " " + rule.getId() + ": " + rule.getNodes().get(0).getHtml());
    }
  }
}
