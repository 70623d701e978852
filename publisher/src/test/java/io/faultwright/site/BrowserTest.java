package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import io.faultwright.model.KnowledgeBase;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Opens every page from its folder, as a technician does with a memory stick. */
class BrowserTest {
  /** Targets for gloved fingers are at least this high, in CSS pixels (WCAG 2.2, 2.5.5). */
  private static final int TARGET = 44;

  private static final String TARGETS =
      ".complaints a, .targets a, .jumps a, .head a, summary, .foot a, figcaption a";

  @TempDir static Path temp;
  private static final List<String> COMPLAINTS = new ArrayList<>();
  private static Browser browser;
  private static Page page;
  private static Published site;

  @BeforeAll
  static void publish() throws IOException {
    browser = Browser.open();
    String long1 = "x".repeat(300);
    KnowledgeBase kb =
        new SampleBook(text -> text.length() > 25 ? text + " " + long1 : text).build();
    site = Published.publish(kb, SampleChanges.draft(kb, List.of(), false), temp.resolve("site"));
    page = browser.chromium().newContext().newPage();
    page.onConsoleMessage(message -> COMPLAINTS.add(message.text()));
    page.onPageError(COMPLAINTS::add);
    page.onRequestFailed(request -> COMPLAINTS.add(request.url() + " " + request.failure()));
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static BrowserContext context(int width, ColorScheme scheme) {
    return browser
        .chromium()
        .newContext(
            new com.microsoft.playwright.Browser.NewContextOptions()
                .setViewportSize(width, 800)
                .setColorScheme(scheme));
  }

  private static void open(Page page, String path) {
    page.navigate(temp.resolve("site").resolve(path).toUri().toString());
    page.evaluate("document.fonts.ready.then(() => 1)");
  }

  /** Each page is opened once, and then looked at in every width and light. */
  @TestFactory
  Stream<DynamicTest> pagesFitAndAreLegible() {
    return site.pages().map(path -> DynamicTest.dynamicTest(path, () -> check(path)));
  }

  private static void check(String path) {
    open(page, path);
    for (int width : List.of(320, 375, 1280)) {
      page.setViewportSize(width, 800);
      int wide = (int) page.evaluate("document.documentElement.scrollWidth");
      assertTrue(wide <= width, path + " is " + wide + " wide: " + widest(page, width));
    }
    page.setViewportSize(375, 800);
    assertEquals(List.of(), tooSmallForGloves(page));
    for (ColorScheme scheme : List.of(ColorScheme.DARK, ColorScheme.LIGHT)) {
      page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
      assertEquals(List.of(), page.evaluate(Contrast.SCRIPT), scheme + " " + path);
    }
    assertEquals(List.of(), COMPLAINTS, path);
  }

  private static Object widest(Page page, int width) {
    return page.evaluate(
        "width => [...document.querySelectorAll('body *')]"
            + ".filter(e => e.getBoundingClientRect().right > width + 1)"
            + ".slice(0, 5).map(e => e.tagName + '.' + e.className).join(' ')",
        width);
  }

  private static Object tooSmallForGloves(Page page) {
    return page.evaluate(
        "([targets, least]) => [...document.querySelectorAll(targets)]"
            + ".filter(e => e.checkVisibility())"
            + ".filter(e => e.getBoundingClientRect().height < least - 0.5)"
            + ".map(e => e.textContent + ' ' + e.getBoundingClientRect().height)",
        List.of(TARGETS, TARGET));
  }

  @Test
  void theStyleAndTheFontsOfTheFolderAreUsed() {
    try (BrowserContext context = context(375, ColorScheme.LIGHT)) {
      Page page = context.newPage();
      open(page, "symptom/ice-left.html");
      assertEquals(
          true, page.evaluate("[...document.fonts].some(face => face.status === 'loaded')"));
      assertEquals("rgb(251, 250, 246)", background(page));
    }
  }

  @Test
  void isDarkInDarkRooms() {
    try (BrowserContext context = context(375, ColorScheme.DARK)) {
      Page page = context.newPage();
      open(page, "index.html");
      assertEquals("rgb(20, 23, 26)", background(page));
    }
  }

  private static Object background(Page page) {
    return page.evaluate("getComputedStyle(document.body).backgroundColor");
  }

  @Test
  void leadsFromTheComplaintToTheRepair() {
    try (BrowserContext context = context(375, ColorScheme.LIGHT)) {
      Page page = context.newPage();
      open(page, "index.html");
      page.click(".complaints a >> nth=0");
      page.click(".rules .then a >> nth=0");
      assertTrue(page.url().endsWith("#fault-valve-restricted"), page.url());
      assertTrue(page.isVisible("#fault-valve-restricted .steps"));
    }
  }
}
