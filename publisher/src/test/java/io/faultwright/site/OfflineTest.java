package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import io.faultwright.model.KnowledgeBase;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a device does with a handbook from a host: keep it, work without a signal, tell of news. */
class OfflineTest {
  private static final String NOTICE = ".edition-notice";

  private static Browser browser;
  private Host host;
  private BrowserContext context;
  private final List<String> requests = Collections.synchronizedList(new ArrayList<>());

  @BeforeAll
  static void start() {
    browser = Browser.open();
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void open() {
    host = new Host();
    context = browser.chromium().newContext();
    context.setDefaultTimeout(15_000);
    context.onRequest(request -> requests.add(request.url()));
  }

  @AfterEach
  void nothingWasAskedOfAnybodyElse() {
    context.close();
    host.close();
    assertEquals(
        List.of(), requests.stream().filter(url -> !url.startsWith(host.address(""))).toList());
  }

  private Page visit(String path) {
    Page page = context.newPage();
    page.navigate(host.address(path));
    return page;
  }

  /** Until the device has everything, and pages are answered from it. */
  private Page kept(String path) {
    Page page = visit(path);
    page.waitForFunction("() => navigator.serviceWorker.controller !== null");
    page.waitForFunction("() => localStorage.length > 0");
    return page;
  }

  private void loseSignal() {
    context.setOffline(true);
    host.close();
  }

  private static SortedMap<String, byte[]> first() {
    return new SmallSite("1").published();
  }

  private static SortedMap<String, byte[]> second() {
    return new SmallSite("2").symptom("ice", "Ice is left after a defrost", "2").published();
  }

  @Test
  void pagesNeverVisitedOpenWithoutASignal() {
    host.put("", first());
    Page page = kept("");
    loseSignal();
    for (String path :
        List.of("", "index.html", "index.html?model=FL-12GP1", "symptom/ice.html", "symptom/ice")) {
      assertEquals(200, page.navigate(host.address(path)).status(), path);
    }
    assertEquals("Hoses", title(page, "guide/h%C3%A4%201.html"));
    assertEquals("Diagnosis", title(page, "diagnose.html#model=FL-12GP1"));
    page.navigate(host.address(""));
    page.reload();
    assertEquals("1", page.textContent("#revision"));
  }

  private String title(Page page, String path) {
    page.navigate(host.address(path));
    return page.title();
  }

  @Test
  void aPublishedHandbookOpensOnPagesNeverVisited(@TempDir Path temp) throws IOException {
    KnowledgeBase kb = SampleBook.plain();
    SortedMap<String, byte[]> site =
        new TreeMap<>(Published.publish(kb, Options.release(false), temp.resolve("site")).files());
    site.keySet().removeIf(path -> path.startsWith("."));
    host.put("handbook/", site);
    Page page = kept("handbook/");
    List<String> complaints = new ArrayList<>();
    page.onPageError(complaints::add);
    page.onConsoleMessage(message -> complaints.add(message.text()));
    loseSignal();
    for (String path : site.keySet()) {
      if (path.endsWith(".html")) {
        assertEquals(200, page.navigate(host.address("handbook/" + path)).status(), path);
      }
    }
    page.navigate(host.address("handbook/symptom/ice-left.html"));
    assertTrue(page.locator(".chart svg").first().boundingBox().width > 100);
    page.navigate(host.address("handbook/search.html#q=valve"));
    page.waitForSelector("#results a");
    page.navigate(
        host.address("handbook/diagnose.html#model=FL-12G&software=2.10&symptom=ice-left"));
    page.waitForSelector("#guided-step .answers button");
    assertFalse(page.textContent("#guided-strip").contains("revision"));
    page.evaluate(
        "() => { const key = Object.keys(localStorage).find(name => name.endsWith('/job'));"
            + " const job = JSON.parse(localStorage.getItem(key)); job.revision = '0';"
            + " localStorage.setItem(key, JSON.stringify(job)); }");
    page.reload();
    page.waitForSelector("#guided-step .answers button");
    assertTrue(page.textContent("#guided-strip").contains("begun with revision 0, now revision"));
    assertEquals(List.of(), complaints);
  }

  @Test
  void whatIsLargeIsKeptOnceItWasOpened() {
    host.put("", first());
    Page page = kept("");
    assertFalse(host.asked().contains("charts/ice-1.svg"));
    assertEquals(200, page.navigate(host.address("charts/ice-1.svg")).status());
    loseSignal();
    assertEquals(200, page.navigate(host.address("charts/ice-1.svg")).status());
    Response missing = page.navigate(host.address("handbook.pdf"));
    assertEquals(503, missing.status());
    assertEquals("Not on this device", page.textContent("h1"));
    page.click("a");
    assertEquals("1", page.textContent("#revision"));
  }

  @Test
  void aNewEditionIsAnnouncedAndWaitsForTheButton() {
    host.put("", first());
    Page page = kept("");
    host.put("", second());
    host.asked();
    page.reload();
    page.waitForSelector(NOTICE + " button");
    assertEquals("1", page.textContent("#revision"));
    String notice = page.textContent(NOTICE);
    assertTrue(notice.contains("A new edition is ready: revision 2."), notice);
    assertTrue(notice.contains("Changed: Ice is left after a defrost"), notice);
    assertFalse(notice.contains("warm"), notice);
    assertEquals("status", page.getAttribute(NOTICE, "role"));
    assertEquals(
        List.of("guided/symptom-ice.js", "index.html", "worker.js"),
        host.asked().stream().sorted().distinct().toList());
    page.navigate(host.address(""));
    assertEquals("1", page.textContent("#revision"));
    page.click(NOTICE + " button >> nth=0");
    page.waitForFunction("() => document.getElementById('revision').textContent === '2'");
    page.waitForTimeout(500);
    assertEquals(0, page.locator(NOTICE).count());
    loseSignal();
    page.navigate(host.address("guided/symptom-ice.js"));
    assertTrue(page.content().contains("rules: '2'"), page.content());
  }

  @Test
  void laterMeansNotInThisVisit() {
    host.put("", first());
    Page page = kept("");
    host.put("", second());
    page.reload();
    page.click(NOTICE + " button >> nth=1");
    page.navigate(host.address("symptom/ice.html"));
    page.waitForTimeout(500);
    assertEquals(0, page.locator(NOTICE).count());
  }

  @Test
  void whatIsNewAndGoneIsNamed() {
    host.put("", first());
    Page page = kept("");
    SmallSite next = new SmallSite("3").without("warm").symptom("noise", "<b>Noise</b>", "1");
    host.put("", next.published());
    page.reload();
    page.waitForSelector(NOTICE + " li");
    assertEquals(
        List.of("New: <b>Noise</b>", "No longer in it: The room is too warm"),
        page.locator(NOTICE + " li").allTextContents());
  }

  @Test
  void nothingIsOfferedInTheMiddleOfAJob() {
    host.put("", first());
    Page page = kept("diagnose.html");
    page.navigate(host.address("diagnose.html#model=FL-12GP1"));
    host.put("", second());
    page.reload();
    page.waitForSelector(NOTICE);
    assertEquals(0, page.locator(NOTICE + " button").count());
    assertTrue(page.textContent(NOTICE).contains("after this job"));
    page.evaluate("location.hash = ''");
    page.waitForSelector(NOTICE + " button");
    assertEquals(2, page.locator(NOTICE + " button").count());
  }

  @Test
  void aJobInAnotherWindowIsNotDisturbed() {
    host.put("", first());
    Page page = kept("");
    Page job = visit("diagnose.html#model=FL-12GP1");
    host.put("", second());
    page.reload();
    page.click(NOTICE + " button >> nth=0");
    page.waitForFunction(
        "() => document.querySelector('.edition-notice').textContent.includes('another window')");
    assertEquals("1", page.textContent("#revision"));
    job.close();
    page.click(NOTICE + " button >> nth=0");
    page.waitForFunction("() => document.getElementById('revision').textContent === '2'");
  }

  @Test
  void anotherWindowIsToldAndLeftAsItIs() {
    host.put("", first());
    Page page = kept("");
    Page other = visit("index.html");
    host.put("", second());
    page.reload();
    page.click(NOTICE + " button >> nth=0");
    page.waitForFunction("() => document.getElementById('revision').textContent === '2'");
    other.waitForFunction(
        "() => (document.querySelector('.edition-notice') || document.body).textContent"
            + ".includes('still of the old one')");
    assertEquals("1", other.textContent("#revision"));
    other.click(NOTICE + " button");
    other.waitForFunction("() => document.getElementById('revision').textContent === '2'");
  }

  @Test
  void anEditionThatTookOverWhileNoPageWasOpenIsToldOfAtTheNextVisit() {
    host.put("", first());
    Page page = kept("");
    host.put("", second());
    page.reload();
    page.waitForSelector(NOTICE);
    page.close();
    Page next = context.newPage();
    next.waitForTimeout(1000);
    next.navigate(host.address(""));
    next.waitForSelector(NOTICE);
    String notice = next.textContent(NOTICE);
    assertEquals("2", next.textContent("#revision"));
    assertTrue(notice.contains("This is a new edition: revision 2."), notice);
    assertTrue(notice.contains("Changed: Ice is left after a defrost"), notice);
  }

  @Test
  void aHostWithHalfOfANewEditionChangesNothing() {
    host.put("", first());
    Page page = kept("");
    SortedMap<String, byte[]> half = new TreeMap<>(first());
    half.put("worker.js", second().get("worker.js"));
    host.put("", half);
    page.reload();
    page.waitForTimeout(1500);
    assertEquals(0, page.locator(NOTICE).count());
    loseSignal();
    page.reload();
    assertEquals("1", page.textContent("#revision"));
  }

  @Test
  void damagedFilesAreNotKept() {
    SortedMap<String, byte[]> site = first();
    site.put("symptom/ice.html", "<p>a page of somebody else".getBytes(StandardCharsets.UTF_8));
    host.put("", site);
    Page page = visit("");
    page.waitForTimeout(1500);
    assertEquals(
        true,
        page.evaluate(
            "navigator.serviceWorker.getRegistration().then(found => !found || !found.active)"));
    host.put("", first());
    host.asked();
    page.close();
    kept("");
    assertTrue(
        host.asked().stream().noneMatch("symptom/warm.html"::equals),
        "what was fetched before is not fetched again");
  }

  @Test
  void twoHandbooksOnOneHostDoNotTouchEachOther() {
    host.put("a/", first());
    host.put("a/b/", first());
    Page outer = kept("a/");
    Page inner = context.newPage();
    inner.navigate(host.address("a/b/"));
    inner.waitForFunction(
        "() => navigator.serviceWorker.controller.scriptURL.endsWith('/a/b/worker.js')"
            + " && localStorage.length === 2");
    assertEquals(2, caches(inner));
    host.put("a/b/", second());
    inner.reload();
    inner.click(NOTICE + " button >> nth=0");
    inner.waitForFunction("() => document.getElementById('revision').textContent === '2'");
    inner.waitForTimeout(500);
    assertEquals(2, caches(inner));
    loseSignal();
    outer.reload();
    assertEquals("1", outer.textContent("#revision"));
    inner.reload();
    assertEquals("2", inner.textContent("#revision"));
  }

  private static Object caches(Page page) {
    return page.evaluate("caches.keys().then(names => names.length)");
  }

  @Test
  void theDeviceMayInstallIt() {
    host.put("", first());
    Page page = kept("symptom/ice.html");
    Object manifest =
        page.evaluate(
            "() => fetch(document.querySelector('link[rel=manifest]').href)"
                + ".then(answer => answer.json())");
    assertEquals("Small handbook", ((Map<?, ?>) manifest).get("name"));
    assertEquals("standalone", ((Map<?, ?>) manifest).get("display"));
    List<?> icons = (List<?>) ((Map<?, ?>) manifest).get("icons");
    for (Object icon : icons) {
      Object size =
          page.evaluate(
              "source => new Promise((done, fail) => { const image = new Image();"
                  + " image.onload = () => done(image.naturalWidth); image.onerror = fail;"
                  + " image.src = source; })",
              host.address((String) ((Map<?, ?>) icon).get("src")));
      String sizes = (String) ((Map<?, ?>) icon).get("sizes");
      assertTrue(sizes.equals("any") || sizes.startsWith(size + "x"), sizes + " is " + size);
    }
  }
}
