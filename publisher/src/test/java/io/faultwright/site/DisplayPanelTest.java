package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import io.faultwright.resolve.Resolver;
import io.faultwright.syntax.FolderReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the display says, and for how long, beside a question of the guided page. */
class DisplayPanelTest {
  private static final Path RULES =
      Path.of("..", "engine", "src", "test", "resources", "sequences", "heating-cycle");
  private static final String PANEL = "details.display-times";

  @TempDir static Path temp;
  private static Browser browser;

  @BeforeAll
  static void publish() throws IOException {
    browser = Browser.open();
    Published.publish(
        Resolver.resolve(FolderReader.read(RULES)), Options.release(false), temp.resolve("site"));
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static Page open(BrowserContext context, String machine) {
    return open(context, machine, "");
  }

  /** With answers that were given before. */
  private static Page open(BrowserContext context, String machine, String answers) {
    Page page = context.newPage();
    page.navigate(
        temp.resolve("site").toUri()
            + "diagnose.html#"
            + machine
            + "&symptom=machine-stops"
            + answers);
    page.waitForSelector("#guided:not([hidden])");
    page.waitForSelector(PANEL);
    page.click(PANEL + " summary");
    return page;
  }

  private static void say(Page page, String display, String minutes, String seconds) {
    page.click(PANEL + " [data-display='" + display + "']");
    List<String> parts = List.of(minutes, seconds);
    for (int i = 0; i < parts.size(); i++) {
      page.locator(PANEL + " input").nth(i).fill(parts.get(i));
    }
  }

  /** The faults below a heading, as they are listed. */
  private static List<String> below(Page page, String heading) {
    return page.locator(PANEL + " [role=status] div")
        .filter(
            new Locator.FilterOptions()
                .setHas(page.locator("h3", new Page.LocatorOptions().setHasText(heading))))
        .locator("li")
        .allInnerTexts();
  }

  @Test
  void whoWatchesIsWarnedFirst() {
    try (BrowserContext context = browser.chromium().newContext()) {
      Page page = open(context, "model=MO-1&software=2.9");
      String text = page.locator(PANEL + " .panel[data-signal=WARNING]").innerText();
      assertTrue(text.contains("The machine starts by itself"), text);
      page.navigate(temp.resolve("site/sequence/heating-cycle.html").toUri().toString());
      assertEquals(text, page.locator("h1 ~ .panel.is-warning").innerText());
    }
  }

  /** The controller itself ends a heating, three minutes before 2.10 and six from 2.10 on. */
  @Test
  void howLongItSaysSoTellsTheFaultsApart() {
    try (BrowserContext context = browser.chromium().newContext()) {
      Page page = open(context, "model=MO-1&software=2.9");
      say(page, "HEAT", "3", "0");
      assertEquals(
          List.of("Nothing is released", "The release switch is stuck closed"),
          page.locator(PANEL + " [role=status] li").allInnerTexts().stream().sorted().toList());
      say(page, "FULL", "", "");
      assertEquals(List.of("Nothing is released"), below(page, "Goes with it"));
      assertEquals(
          List.of("The release switch is stuck closed"), below(page, "Does not go with it"));
    }
  }

  @Test
  void theSameTimeMeansSomethingElseOnOtherSoftware() {
    try (BrowserContext context = browser.chromium().newContext()) {
      Page old = open(context, "model=MO-1&software=2.9");
      say(old, "HEAT", "6", "0");
      assertFalse(below(old, "Goes with it").contains("The release switch is stuck closed"));
      Page newer = open(context, "model=MO-1&software=2.10");
      say(newer, "HEAT", "6", "0");
      assertEquals(
          true, below(newer, "Goes with it").contains("The release switch is stuck closed"));
    }
  }

  @Test
  void whatCannotBeIsSaid() {
    try (BrowserContext context = browser.chromium().newContext()) {
      Page page = open(context, "model=MO-1&software=2.9");
      page.locator(PANEL + " input").nth(0).fill("3");
      assertEquals("Press what the display says first.", wrong(page));
      say(page, "HEAT", "x", "");
      assertEquals("Type one number, such as 2.", wrong(page));
      say(page, "FULL", "-1", "");
      assertEquals("Type one number, such as 2.", wrong(page));
      say(page, "HEAT", "50", "");
      assertEquals(
          "None of the faults listed here goes with it. Look at the display and the time again.",
          wrong(page));
      assertEquals(List.of(), below(page, "Goes with it"));
      assertEquals(2, below(page, "Does not go with it").size());
      say(page, "FULL", "", "");
      assertEquals(0, page.locator(PANEL + " .wrong").count());
    }
  }

  private static String wrong(Page page) {
    return page.locator(PANEL + " .wrong").innerText();
  }

  /** Without a stop it is not the fault that stops it; the panel says so beside it. */
  @Test
  void whatTheAnswersRuleOutIsMarked() {
    try (BrowserContext context = browser.chromium().newContext()) {
      Page page = open(context, "model=MO-1&software=2.9", "&r.stop-shown=none");
      say(page, "HEAT", "3", "0");
      assertEquals(
          List.of("Nothing is released Ruled out", "The release switch is stuck closed"),
          below(page, "Goes with it").stream()
              .map(line -> line.replaceAll("\\s+", " "))
              .sorted()
              .toList());
    }
  }

  @Test
  void isAccessibleAndFitsAPhone() {
    try (BrowserContext context = browser.chromium().newContext()) {
      Page page = open(context, "model=MO-1&software=2.10");
      page.setViewportSize(375, 800);
      say(page, "HEAT", "6", "0");
      List<String> told = new ArrayList<>();
      page.evaluate(Axe.SCRIPT);
      Axe.check(page, "display panel", told);
      assertEquals(List.of(), told);
      assertEquals(
          true, page.evaluate("document.documentElement.scrollWidth <= window.innerWidth"));
    }
  }
}
