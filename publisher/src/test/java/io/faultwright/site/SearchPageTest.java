package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import io.faultwright.flow.Demos;
import io.faultwright.model.KnowledgeBase;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Searches the demonstration handbook as it is opened from its folder, without any server. */
class SearchPageTest {
  private static final String HOSTILE = "<img src=x onerror=alert(1)></script><b>\u2028";

  @TempDir static Path temp;
  private static Browser browser;

  private final List<String> complaints = new ArrayList<>();
  private BrowserContext context;
  private Page page;

  @BeforeAll
  static void publish() throws IOException {
    browser = Browser.open();
    publish(Demos.all().get(0), "demo");
    publish(new SampleBook(text -> text + " " + HOSTILE).build(), "hostile");
  }

  private static void publish(KnowledgeBase kb, String folder) throws IOException {
    new SitePublisher()
        .publish(kb, new TreeMap<>(), Options.draft(List.of(), false), temp.resolve(folder));
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void openPage() {
    context = browser.chromium().newContext();
    page = context.newPage();
    page.setViewportSize(375, 800);
    page.onConsoleMessage(message -> complaints.add(message.text()));
    page.onPageError(complaints::add);
  }

  @AfterEach
  void closePage() {
    context.close();
    assertEquals(List.of(), complaints);
  }

  private void open(String address) {
    String[] parts = address.split("#");
    String file = temp.resolve(parts[0]).toUri().toString();
    page.navigate(parts.length > 1 ? file + "#" + parts[1] : file);
  }

  private Locator names() {
    return page.locator("#results a .name");
  }

  private Locator count() {
    return page.locator("#count");
  }

  @ParameterizedTest
  @CsvSource({
    "short cycling, The compressor short-cycles",
    "shrot cyclign, The compressor short-cycles",
    "short-cycles, The compressor short-cycles",
    "supreheat, Superheat",
    "supreh, Superheat",
    "SH, Superheat",
    "high head, The discharge pressure is too high",
    "condensor fan motor, Condenser fan motor failed",
    "BC-0412, Hot-gas valve",
    "bc0412, Hot-gas valve",
    "FL-12, FL-12GP1",
    "fl12gp2, FL-12GP2",
    "drain, The drain is frozen",
    "too warm room, The room is too warm",
    "LEAKING door, Door gasket leaks",
    "R-404A, R-404A: pressure and temperature"
  })
  void findsTheRightThingFirst(String query, String first) {
    open("demo/search.html");
    page.fill("#q", query);
    PlaywrightAssertions.assertThat(names().first()).hasText(first);
  }

  @Test
  void saysWhichWordsOfThePeopleMeantIt() {
    open("demo/search.html#q=short+cycling");
    PlaywrightAssertions.assertThat(page.locator("#results .said b").first())
        .hasText("short cycling");
    PlaywrightAssertions.assertThat(count()).hasText("1 result");
  }

  /** An order number that is nearly right is another part. */
  @ParameterizedTest
  @ValueSource(strings = {"BC-0499", "xyzzy", "compressor xyzzy"})
  void saysWhatToDoWhereNothingIsFound(String query) {
    open("demo/search.html");
    page.fill("#q", query);
    PlaywrightAssertions.assertThat(count())
        .hasText("Nothing found. Use fewer or other words, or see A to Z.");
    assertEquals(0, names().count());
  }

  @Test
  void theFamilyNarrowsTheResultsDown() {
    open("demo/search.html#q=head-pressure+valve");
    PlaywrightAssertions.assertThat(names().first()).isVisible();
    assertTrue(names().allTextContents().contains("Head-pressure valve does not bypass"));
    page.check("[name=family][value=fell]", new Page.CheckOptions().setForce(true));
    PlaywrightAssertions.assertThat(page).hasURL(java.util.regex.Pattern.compile(".*family=fell"));
    assertFalse(names().allTextContents().contains("Head-pressure valve does not bypass"));
  }

  @Test
  void theAddressKeepsTheSearch() {
    open("demo/search.html#q=superheat&family=tarn");
    PlaywrightAssertions.assertThat(names().first()).hasText("Superheat");
    assertEquals("superheat", page.inputValue("#q"));
    assertTrue(page.isChecked("[name=family][value=tarn]"));
    page.fill("#q", "ice & <b>");
    PlaywrightAssertions.assertThat(page)
        .hasURL(java.util.regex.Pattern.compile(".*#q=ice\\+%26\\+%3Cb%3E&family=tarn"));
    page.reload();
    assertEquals("ice & <b>", page.inputValue("#q"));
  }

  @Test
  void theFieldOnTheStartPageLeadsHere() {
    open("demo/index.html");
    page.fill("#q", "short cycling");
    page.press("#q", "Enter");
    PlaywrightAssertions.assertThat(names().first()).hasText("The compressor short-cycles");
    page.locator("#results a").first().press("Enter");
    PlaywrightAssertions.assertThat(page.locator("h1")).hasText("The compressor short-cycles");
    page.goBack();
    PlaywrightAssertions.assertThat(names().first()).hasText("The compressor short-cycles");
  }

  @Test
  void everyResultLeadsToAPlaceThatExists() {
    open("demo/search.html#q=valve");
    PlaywrightAssertions.assertThat(names().first()).isVisible();
    for (Object href :
        (List<?>)
            page.evaluate(
                "[...document.querySelectorAll('#results a')].map(a => a.getAttribute('href'))")) {
      open("demo/" + href);
      String anchor = href.toString().contains("#") ? href.toString().split("#")[1] : "main";
      assertEquals(1, page.locator("#" + anchor).count(), href.toString());
    }
  }

  @Test
  void resultsFitThePhoneAndTheGlove() {
    open("demo/search.html#q=heater");
    PlaywrightAssertions.assertThat(names().first()).isVisible();
    assertEquals(
        List.of(),
        page.evaluate(
            "[...document.querySelectorAll('#results a, #q, .chips label')]"
                + ".filter(e => e.getBoundingClientRect().height < 43.5).map(e => e.textContent)"));
    assertTrue((int) page.evaluate("document.documentElement.scrollWidth") <= 375);
    assertEquals(List.of(), page.evaluate(Contrast.SCRIPT));
  }

  @Test
  void hostileTextsAreShownAsTexts() {
    open("hostile/search.html#q=valve");
    PlaywrightAssertions.assertThat(names().first()).isVisible();
    assertTrue(names().first().textContent().contains("<img src=x onerror=alert(1)>"));
    assertEquals(0, page.locator("#results img, #results script").count());
    open("hostile/search.html#q=%3Cimg+src%3Dx+onerror%3Dalert(1)%3E");
    assertEquals(0, page.locator("main img").count());
  }

  @Test
  void withoutScriptsThePageSaysWhereToLook() {
    context.close();
    context =
        browser
            .chromium()
            .newContext(
                new com.microsoft.playwright.Browser.NewContextOptions()
                    .setJavaScriptEnabled(false));
    page = context.newPage();
    open("demo/search.html");
    assertTrue(page.locator("main noscript, main").first().innerText().contains("A to Z"));
    assertFalse(page.isVisible("#q"));
    open("demo/index.html");
    assertFalse(page.isVisible("#q"));
    assertTrue(page.isVisible("nav a[href='search.html']"));
  }
}
