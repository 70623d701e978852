package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import io.faultwright.layout.Paper;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.piece.Ledger;
import io.faultwright.piece.Workshop;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The whole handbook in one file, opened from disk. */
class SingleFileTest {
  private static final byte[] DOT =
      Base64.getDecoder()
          .decode(
              "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mNk+A8AAQUBAScY42YAAAAA"
                  + "SUVORK5CYII=");

  @TempDir static Path temp;
  private static Browser browser;
  private static KnowledgeBase kb;
  private static SortedMap<String, SortedMap<String, Drawn>> drawn;
  private static Path file;

  private static final List<String> COMPLAINTS = Collections.synchronizedList(new ArrayList<>());
  private static Page page;

  @BeforeAll
  static void publish() throws IOException {
    browser = Browser.open();
    kb = SampleBook.plain();
    drawn = drawn(kb, false);
    file = written("handbook.html", kb, drawn, Options.release(false));
    BrowserContext context = browser.chromium().newContext();
    context.setDefaultTimeout(15_000);
    page = context.newPage();
    page.onConsoleMessage(message -> COMPLAINTS.add(message.text()));
    page.onPageError(COMPLAINTS::add);
    page.onRequest(
        request -> {
          if (!request.url().startsWith("data:") && !request.isNavigationRequest()) {
            COMPLAINTS.add("asks for " + request.url());
          }
        });
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static SortedMap<String, SortedMap<String, Drawn>> drawn(KnowledgeBase kb, boolean draft)
      throws IOException {
    return new ChartDrawings(kb, draft, Paper.A4).all(new Workshop(Ledger.empty()));
  }

  private static Path written(
      String name,
      KnowledgeBase kb,
      SortedMap<String, SortedMap<String, Drawn>> drawn,
      Options options)
      throws IOException {
    Path to = temp.resolve(name);
    new SitePublisher().publishAsOneFile(kb, drawn, options, to);
    return to;
  }

  @BeforeEach
  void open() {
    page.navigate("about:blank");
    page.navigate(file.toUri().toString());
  }

  /** Nothing is left for the next test, which finds the page as a browser that never saw it. */
  @AfterEach
  void complainedOfNothing() {
    page.evaluate("localStorage.clear()");
    List<String> told = List.copyOf(COMPLAINTS);
    COMPLAINTS.clear();
    assertEquals(List.of(), told);
  }

  private String heading() {
    return page.textContent("h1");
  }

  private void awaitHeading(String text) {
    page.waitForFunction("text => document.querySelector('h1').textContent === text", text);
  }

  @Test
  void leadsFromTheComplaintToTheRepairAndBack() {
    String start = heading();
    page.click(".complaints a >> nth=0");
    String complaint = heading();
    assertTrue(page.url().contains("#/symptom/"), page.url());
    assertTrue(page.title().startsWith(complaint), page.title());
    assertTrue(page.locator(".chart svg").first().boundingBox().width > 100);
    page.click(".rules .then a >> nth=0");
    assertTrue(page.url().endsWith("#fault-valve-restricted"), page.url());
    assertTrue(
        (boolean)
            page.evaluate(
                "() => { const y = document.getElementById('fault-valve-restricted')"
                    + ".getBoundingClientRect().top; return y >= -1 && y < innerHeight; }"));
    page.goBack();
    page.goBack();
    awaitHeading(start);
    page.goForward();
    awaitHeading(complaint);
  }

  @Test
  void opensAtAnyPage() {
    page.navigate("about:blank");
    page.navigate(file.toUri() + "#/symptom/ice-left.html#fault-valve-restricted");
    assertTrue(page.isVisible("#fault-valve-restricted"));
    page.click(".head nav a >> text=Safety");
    assertEquals("Safety", heading());
    page.reload();
    assertEquals("Safety", heading());
    page.focus(".skip");
    page.keyboard().press("Enter");
    assertEquals("main", page.evaluate("document.activeElement.id"));
    assertEquals("Safety", heading());
    page.navigate("about:blank");
    page.navigate(file.toUri() + "#/nothing.html");
    assertEquals(kb.handbook().title(), heading());
  }

  /** Every link of every page leads to a page of the file, or is not shown. */
  @Test
  void noLinkLeadsNowhere() {
    Object dead =
        page.evaluate(
            "async () => { const paths = [...document.querySelectorAll('template')]"
                + ".map(one => one.dataset.page); const dead = [];"
                + "for (const path of paths) { location.hash = '#/' + path;"
                + " await new Promise(done => setTimeout(done, 30));"
                + " for (const link of document.querySelectorAll('a[href]:not(.skip)')) {"
                + "  const href = link.getAttribute('href');"
                + "  const fine = href.startsWith('#/')"
                + "    ? paths.includes(href.slice(2).split('#')[0])"
                + "    : /^https?:/.test(href) || !link.checkVisibility();"
                + "  if (!fine) dead.push(path + ': ' + href); } } return dead; }");
    assertEquals(List.of(), dead);
  }

  @Test
  void showsNoTwoPagesAtOnce() {
    page.click(".head nav a >> text=A to Z");
    assertEquals(1, page.locator("h1").count());
    Object twice =
        page.evaluate(
            "() => { const ids = [...document.querySelectorAll('[id]')].map(one => one.id);"
                + " return ids.filter((id, at) => ids.indexOf(id) !== at); }");
    assertEquals(List.of(), twice);
  }

  @Test
  void finds() {
    page.fill("#q", "valve");
    page.click("#search button");
    page.waitForSelector("#results a");
    assertTrue(page.url().endsWith("#/search.html#q=valve"), page.url());
    page.fill("#q", "restricted valve");
    page.waitForFunction("() => location.hash.includes('restricted')");
    String found = page.textContent("#results a .name >> nth=0");
    page.click("#results a >> nth=0");
    assertEquals(found, heading());
    page.goBack();
    page.waitForSelector("#results a");
    assertEquals("restricted valve", page.inputValue("#q"));
  }

  @Test
  void diagnoses() {
    page.navigate("about:blank");
    page.navigate(file.toUri() + "#/diagnose.html#model=FL-12G&software=2.10&symptom=ice-left");
    page.waitForSelector("#guided-step .answers button");
    String question = page.textContent("#guided-question");
    page.click("#guided-step .answers button >> nth=0");
    page.waitForFunction("() => location.hash.includes('&r.')");
    assertTrue(
        page.url().contains("#/diagnose.html#model=FL-12G&software=2.10&symptom=ice-left&r."),
        page.url());
    page.click("#guided-back");
    awaitQuestion(question);
    page.click(".head nav a >> text=Safety");
    awaitHeading("Safety");
    page.goBack();
    awaitQuestion(question);
    page.click(".head nav a >> text=Safety");
    awaitHeading("Safety");
    page.evaluate("location.hash = '#/diagnose.html'");
    page.click("#guided-resume");
    awaitQuestion(question);
  }

  private void awaitQuestion(String text) {
    page.waitForFunction(
        "text => (document.getElementById('guided-question') || document.body).textContent === text",
        text);
  }

  @Test
  void saysWithoutScriptsWhatIsMissing() {
    try (BrowserContext plain =
        browser
            .chromium()
            .newContext(
                new com.microsoft.playwright.Browser.NewContextOptions()
                    .setJavaScriptEnabled(false))) {
      Page bare = plain.newPage();
      bare.navigate(file.toUri().toString());
      assertTrue(bare.isVisible(".complaints a >> nth=0"));
      assertTrue(bare.isVisible("noscript p"));
    }
  }

  @Test
  void isTheSameEveryTimeAndCleanHtml() throws IOException {
    byte[] first = Files.readAllBytes(file);
    assertArrayEquals(
        first, Files.readAllBytes(written("again.html", kb, drawn, Options.release(false))));
    String html = new String(first, StandardCharsets.UTF_8);
    assertFalse(html.contains("unsafe-"));
    assertFalse(html.contains("is-draft\""));
  }

  @Test
  void keepsTheMarkOfADraftAndItsPictures() throws IOException {
    SortedMap<String, byte[]> pictures = new TreeMap<>();
    pictures.put("a b.png", DOT);
    Options draft = new Options(true, List.of(), false, Paper.A4, pictures);
    Path marked = written("draft.html", kb, drawn(kb, true), draft);
    page.navigate(marked.toUri() + "#/safety.html");
    assertTrue(page.isVisible(".draft"));
    assertTrue(page.title().startsWith("DRAFT"), page.title());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "</template></script></style><script>window.broken = 1</script>",
        "\"><img src=x onerror=\"window.broken = 1\">",
        "<!-- <script> --> ]]> </main></body></html> <main id=\"main\">",
        "<title>x</title></title></head><link rel=\"stylesheet\" href=\"x.css\">",
        "javascript:window.broken=1 \u2028 \uD800 $1 \\",
      })
  void whateverATrainerWritesStaysText(String hostile) throws IOException {
    KnowledgeBase odd = new SampleBook(text -> text + " " + hostile).build();
    Path to = written("odd.html", odd, drawn(odd, false), Options.release(false));
    page.navigate(to.toUri().toString());
    int pages = page.locator("template").count();
    assertEquals(templates(), pages);
    for (String path :
        List.of("symptom/ice-left.html", "safety.html", "a-z.html", "diagnose.html")) {
      page.evaluate("path => { location.hash = '#/' + path; }", path);
      page.waitForFunction("path => location.hash.startsWith('#/' + path)", path);
      page.evaluate("() => new Promise(done => requestAnimationFrame(() => setTimeout(done, 0)))");
      assertEquals(1, page.locator("h1").count(), path);
      assertEquals(1, page.locator("main").count(), path);
    }
    page.waitForTimeout(300);
    assertEquals(true, page.evaluate("window.broken === undefined"));
    page.navigate("about:blank");
    page.navigate(to.toUri() + "#/search.html#q=valve");
    page.waitForSelector("#results a");
    assertEquals(true, page.evaluate("window.broken === undefined"));
  }

  private static long templates() throws IOException {
    String html = Files.readString(file);
    return html.split("<template", -1).length - 1L;
  }
}
