package io.faultwright.lesson;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import io.faultwright.layout.Paper;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.LessonSheet;
import io.faultwright.page.LessonSheets;
import io.faultwright.render.html.LessonHtml;
import io.faultwright.resolve.Resolution;
import io.faultwright.resolve.Resolver;
import io.faultwright.site.Axe;
import io.faultwright.site.Browser;
import io.faultwright.syntax.FolderReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages of the demo session, used as a trainer would: from a file, without a network. */
class LessonPagesTest {
  private static final Path DEMO = Path.of("..", "rules", "walk-in-freezers");
  private static final List<String> COMPLAINTS = new ArrayList<>();

  @TempDir static Path temp;
  private static Browser browser;
  private static LessonSheet sheet;
  private static LessonSheet kinds;

  @BeforeAll
  static void write() throws IOException {
    Resolution read = Resolver.resolution(FolderReader.read(DEMO));
    sheet = lesson(read, read.knowledge());
    write("en", sheet);
    kinds = oneOfEachKind(sheet);
    write("kinds", kinds);
    browser = Browser.open();
  }

  private static LessonSheet oneOfEachKind(LessonSheet whole) {
    Map<String, LessonSheet.Leaf> first = new LinkedHashMap<>();
    whole.leaves().forEach(leaf -> first.putIfAbsent(leaf.kind(), leaf));
    return new LessonSheet(whole.frame(), whole.title(), List.copyOf(first.values()));
  }

  private static LessonSheet lesson(Resolution read, KnowledgeBase kb) {
    return LessonSheets.onScreen(
        Lesson.of(kb, read.sessions().get("hot-gas-defrost"), true, new TreeMap<>(), Paper.A4));
  }

  private static void write(String folder, LessonSheet made) throws IOException {
    for (Map.Entry<String, byte[]> file :
        new LessonHtml().projector(made, "hot-gas-defrost").entrySet()) {
      Path to = temp.resolve(folder).resolve(file.getKey());
      Files.createDirectories(to.getParent());
      Files.write(to, file.getValue());
    }
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @AfterEach
  void nothingIsAmiss() {
    assertEquals(List.of(), COMPLAINTS);
  }

  private static BrowserContext checked() {
    BrowserContext context = browser.chromium().newContext();
    context.addInitScript(Axe.SCRIPT);
    return context;
  }

  private static BrowserContext used(int width) {
    BrowserContext context =
        browser.chromium().newContext(new NewContextOptions().setViewportSize(width, 720));
    context.setOffline(true);
    context.onConsoleMessage(message -> COMPLAINTS.add(message.text()));
    context.onWebError(error -> COMPLAINTS.add(error.error()));
    context.onRequest(
        request -> {
          if (!request.url().startsWith("file:") && !request.url().startsWith("data:")) {
            COMPLAINTS.add("asks for " + request.url());
          }
        });
    return context;
  }

  private static String address(String folder) {
    return temp.resolve(folder).resolve("index.html").toUri().toString();
  }

  /** One page of each kind, as in the accessibility test of the site. */
  @Test
  void noKindOfPageBreaksARuleOfAccessibility() {
    List<String> told = new ArrayList<>();
    assertEquals(16, kinds.leaves().size());
    try (BrowserContext context = checked()) {
      Page page = context.newPage();
      page.navigate(address("kinds"));
      for (int i = 1; i <= kinds.leaves().size(); i++) {
        page.evaluate("number => { location.hash = '#page-' + number; }", i);
        page.waitForSelector("#page-" + i);
        inEveryView(page, kinds.leaves().get(i - 1).kind(), told);
      }
      page.click("#all summary");
      inEveryView(page, "list", told);
    }
    assertEquals(List.of(), told);
  }

  /** Narrow and wide, dark and light: colours do not follow the width. */
  private static void inEveryView(Page page, String what, List<String> told) {
    look(page, 375, ColorScheme.DARK, what, told);
    look(page, 1280, ColorScheme.LIGHT, what, told);
  }

  private static void look(
      Page page, int width, ColorScheme scheme, String what, List<String> told) {
    page.setViewportSize(width, 720);
    page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
    Axe.check(page, what + " at " + width + " " + scheme, told);
  }

  @Test
  void printedPagesBreakNoRule() {
    List<String> told = new ArrayList<>();
    try (BrowserContext context = checked()) {
      Page page = context.newPage();
      page.navigate(address("kinds"));
      page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
      assertTrue(page.locator(".leaf").last().isVisible());
      assertFalse(page.locator(".turn").isVisible());
      page.evaluate("document.querySelectorAll('h1').forEach((h, i) => { if (i) h.remove(); })");
      page.evaluate(
          "document.querySelectorAll('.leaf').forEach(l => l.removeAttribute('aria-labelledby'))");
      Axe.check(page, "print", told);
      assertEquals(List.of(), told);
    }
  }

  @Test
  void keysTurnThePagesAndTheBrowserRemembersTheLast() {
    try (BrowserContext context = used(1280)) {
      Page page = context.newPage();
      page.navigate(address("en"));
      assertEquals(List.of("page-1"), shown(page));
      page.keyboard().press("ArrowRight");
      page.keyboard().press("PageDown");
      page.keyboard().press("Space");
      assertEquals(List.of("page-4"), shown(page));
      page.keyboard().press("Shift+Space");
      page.keyboard().press("ArrowLeft");
      assertEquals(List.of("page-2"), shown(page));
      page.keyboard().press("End");
      assertEquals(List.of("page-" + sheet.leaves().size()), shown(page));
      assertTrue(page.locator("#on").isDisabled());
      page.keyboard().press("Home");
      page.click("#on");
      page.click("#on");
      page.click("#back");
      assertEquals("2 of " + sheet.leaves().size(), page.locator("#where").textContent());
      page.navigate(address("en"));
      assertEquals(List.of("page-2"), shown(page));
      page.click("#all summary");
      page.click("#all a[href='#page-7']");
      page.waitForSelector("#page-7");
      assertEquals(List.of("page-7"), shown(page));
      assertFalse(page.locator("#all ol").isVisible());
    }
  }

  /** All in one look, so that no page is seen before its turn and the next after it. */
  private static List<?> shown(Page page) {
    return (List<?>)
        page.evaluate("() => [...document.querySelectorAll('.leaf:not([hidden])')].map(l => l.id)");
  }

  /** A projector has no pointer at hand: what a frame cuts off is reached with keys. */
  @Test
  void keysReachWhatAFrameCutsOff() {
    try (BrowserContext context = used(1280)) {
      Page page = context.newPage();
      page.setViewportSize(1280, 500);
      int chart = 1;
      while (!(sheet.leaves().get(chart - 1) instanceof LessonSheet.Standing)) {
        chart++;
      }
      page.navigate(address("en") + "#page-" + chart);
      Locator frame = page.locator("#page-" + chart + " .sheet");
      frame.evaluate("sheet => sheet.scrollTop = 0");
      page.keyboard().press("ArrowDown");
      int down = ((Number) frame.evaluate("sheet => Math.round(sheet.scrollTop)")).intValue();
      assertTrue(down > 9, "looked down by " + down);
      page.keyboard().press("ArrowUp");
      int up = ((Number) frame.evaluate("sheet => Math.round(sheet.scrollTop)")).intValue();
      assertTrue(up < 2, "looked up to " + up);
      assertEquals(List.of("page-" + chart), shown(page));
    }
  }

  /**
   * Each reading is asked on one page and told on a later one; the chart grows from step to step.
   */
  @Test
  void aWorkedExampleBuildsUp() {
    List<LessonSheet.Standing> standing = new ArrayList<>();
    List<String> asked = new ArrayList<>();
    for (LessonSheet.Leaf leaf : sheet.leaves()) {
      if (leaf instanceof LessonSheet.Take take) {
        asked.add(take.title());
      }
      if (leaf instanceof LessonSheet.Read read && read.note().isEmpty()) {
        assertEquals(asked.get(asked.size() - 1), read.title());
      }
      if (leaf instanceof LessonSheet.Standing one) {
        standing.add(one);
      }
    }
    List<LessonSheet.Standing> first = standing.subList(0, 6);
    for (int i = 1; i < first.size(); i++) {
      assertTrue(first.get(i).ruledOut().size() >= first.get(i - 1).ruledOut().size());
    }
    assertEquals("Hot-gas valve stuck shut", first.get(5).title());
    String drawn = first.get(5).drawing().orElseThrow().svg().markup();
    assertTrue(drawn.contains("class=\"node here\" data-node=\"fault.hot-gas-valve-stuck\""));
  }

  /** The limits of the demo at 27 degrees lie between the rows for 10 and 32 degrees. */
  @Test
  void aReadingIsPlacedInItsLimits() {
    LessonSheet.Read read =
        sheet.leaves().stream()
            .filter(LessonSheet.Read.class::isInstance)
            .map(LessonSheet.Read.class::cast)
            .filter(one -> one.title().equals("Discharge pressure in defrost"))
            .findFirst()
            .orElseThrow();
    LessonSheet.Scale scale = read.scale().orElseThrow();
    assertEquals("Above limits", scale.verdict());
    // 8.2 + (12.1 - 8.2) * 17 / 22 and 10.4 + (15 - 10.4) * 17 / 22, worked out by hand
    assertEquals(List.of("11.21 bar(g)", "13.95 bar(g)"), List.of(scale.low(), scale.high()));
    assertTrue(scale.from().orElseThrow() < scale.to().orElseThrow());
    assertTrue(scale.to().orElseThrow() < scale.at());
    LessonSheet.PlacedLimits limits = read.limits().orElseThrow();
    assertEquals(
        List.of("10 °C", "32 °C"),
        limits.marked().stream().map(row -> limits.table().rows().get(row).get(0)).toList());
  }

  /** A sequence is gone through by what follows each phase. */
  @Test
  void whatFollowsAPhaseLeadsToIt() {
    try (BrowserContext context = used(1280)) {
      Page page = context.newPage();
      page.navigate(address("en"));
      String first = "number => { location.hash = '#page-' + number; }";
      page.evaluate(first, numberOf("sequence"));
      page.locator(".is-sequence:visible .phase-names a", having("Hot-gas defrost")).click();
      assertThat(page.locator(".leaf:visible h1")).hasText("6 Hot-gas defrost");
      for (String next : List.of("Drip", "Cold coil, fan delay", "Cooling")) {
        page.locator(".is-phase:visible .follows a", having(next)).first().click();
        assertThat(page.locator(".leaf:visible h1")).hasText(Pattern.compile("\\d " + next));
      }
    }
  }

  private static int numberOf(String kind) {
    return 1 + sheet.leaves().stream().map(LessonSheet.Leaf::kind).toList().indexOf(kind);
  }

  /** From the back of a room nobody scrolls. */
  @Test
  void aSequenceFitsTheProjector() {
    try (BrowserContext context = used(1280)) {
      Page page = context.newPage();
      page.navigate(address("en"));
      page.evaluate("() => document.querySelectorAll('.draft').forEach(d => d.hidden = true)");
      List<String> hidden = new ArrayList<>();
      for (int i = 1; i <= sheet.leaves().size(); i++) {
        LessonSheet.Leaf leaf = sheet.leaves().get(i - 1);
        if (List.of("sequence", "phase", "display", "timing").contains(leaf.kind())
            && hidden(page, i) > 0) {
          hidden.add(i + " " + leaf.title() + ": " + hidden(page, i));
        }
      }
      assertEquals(List.of(), hidden);
    }
  }

  /** How far the last line above the foot lies below the bar, in pixels. */
  private static int hidden(Page page, int number) {
    page.evaluate("number => { location.hash = '#page-' + number; }", number);
    page.waitForSelector("#page-" + number);
    return (Integer)
        page.evaluate(
            "() => Math.ceil(document.querySelector('.leaf:not([hidden]) > :nth-last-child(2)')"
                + ".getBoundingClientRect().bottom"
                + " - document.querySelector('.turn').getBoundingClientRect().top)");
  }

  private static Page.LocatorOptions having(String text) {
    return new Page.LocatorOptions().setHasText(text);
  }

  @Test
  void nothingReachesOverTheEdgeOfAPhone() {
    try (BrowserContext context = used(375)) {
      Page page = context.newPage();
      page.navigate(address("en"));
      List<String> wide = new ArrayList<>();
      for (int i = 1; i <= sheet.leaves().size(); i++) {
        page.evaluate("number => { location.hash = '#page-' + number; }", i);
        page.waitForSelector("#page-" + i);
        if ((Boolean) page.evaluate("document.documentElement.scrollWidth > innerWidth")) {
          wide.add("page " + i);
        }
      }
      assertEquals(List.of(), wide);
      assertTrue(page.locator("#on").boundingBox().height >= 44);
    }
  }
}
