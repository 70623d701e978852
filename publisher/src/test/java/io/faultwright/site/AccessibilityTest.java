package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The rules of WCAG 2.2 AA that a program can check, on every kind of page. */
class AccessibilityTest {
  /** Follows a link to another screen of the same page. */
  private static final String FOLLOW =
      """
      async (fragment) => {
        if (location.hash === fragment) return;
        const followed = new Promise((later) => addEventListener("hashchange", later, { once: true }));
        location.hash = fragment;
        await followed;
      }
      """;

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
          "bulletin.html",
          "search.html#q=coil",
          "symptom/ice-left.html",
          "fault/valve-restricted.html",
          "reading/discharge-pressure.html",
          "guide/gauges.html",
          "diagnose.html");

  @TempDir static Path temp;
  private static Browser browser;
  private static Page page;

  @BeforeAll
  static void publish() throws IOException {
    browser = Browser.open();
    KnowledgeBase sample = new SampleBook(text -> text).build();
    Published.publish(
        sample, SampleChanges.draft(sample, List.of(), false), temp.resolve("sample"));
    KnowledgeBase dishwashers = Demos.all().get(1);
    Published.publish(dishwashers, Options.release(false), temp.resolve("dishwashers"));
    BrowserContext context = browser.chromium().newContext();
    context.addInitScript(Axe.SCRIPT);
    page = context.newPage();
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  /** How a page is looked at. */
  private record View(int width, ColorScheme scheme, Media media) {}

  private static final List<View> VIEWS =
      Stream.of(375, 1280)
          .flatMap(
              width ->
                  Stream.of(
                      new View(width, ColorScheme.LIGHT, Media.SCREEN),
                      new View(width, ColorScheme.DARK, Media.SCREEN),
                      new View(width, ColorScheme.LIGHT, Media.PRINT)))
          .toList();

  /** Each page is opened once, and then looked at in every view. */
  @TestFactory
  Stream<DynamicTest> noPageBreaksARule() {
    return SAMPLE.stream()
        .map(path -> DynamicTest.dynamicTest(path, () -> check(page -> open(page, path))));
  }

  /** The screens of a diagnosis: machine, complaint, checks, result, handing over. */
  @TestFactory
  Stream<DynamicTest> noScreenOfADiagnosisBreaksARule() {
    return GuidedScreens.OF_THE_DISHWASHERS.stream()
        .map(
            fragment ->
                DynamicTest.dynamicTest("at " + fragment, () -> check(page -> go(page, fragment))));
  }

  private static void open(Page page, String path) {
    page.navigate(temp.resolve("sample").toUri() + path);
    page.evaluate("document.fonts.ready.then(() => 1)");
  }

  private static void go(Page page, String fragment) {
    String diagnosis = temp.resolve("dishwashers").toUri() + "diagnose.html";
    if (!page.url().startsWith(diagnosis)) {
      page.navigate(diagnosis);
    }
    page.evaluate(FOLLOW, fragment);
    page.waitForFunction(
        "() => !['', 'loading'].includes(document.getElementById('guided').dataset.status)");
  }

  private static void check(Consumer<Page> opening) {
    List<String> told = new ArrayList<>();
    opening.accept(page);
    for (View view : VIEWS) {
      page.setViewportSize(view.width, 800);
      page.emulateMedia(
          new Page.EmulateMediaOptions().setMedia(view.media).setColorScheme(view.scheme));
      Axe.check(page, view.toString(), told);
    }
    assertEquals(List.of(), told);
  }
}
