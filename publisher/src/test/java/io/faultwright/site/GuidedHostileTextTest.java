package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import io.faultwright.model.KnowledgeBase;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a trainer writes into any text, pages with scripts show it as text and run nothing. */
class GuidedHostileTextTest {
  private static final String SHORT =
      HostileTextTest.texts().filter(text -> text.length() < 1000).collect(Collectors.joining(" "));

  @TempDir static Path temp;
  private static Browser browser;

  @BeforeAll
  static void open() {
    browser = Browser.open();
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void isShownAndRunsNothing(boolean long1) throws IOException {
    String hostile = long1 ? "x".repeat(10_000) : SHORT;
    KnowledgeBase kb = new SampleBook(text -> text + " " + hostile).build();
    Path site = temp.resolve("site" + long1);
    new SitePublisher().publish(kb, new TreeMap<>(), Options.draft(List.of(), false), site);
    GuidedPage.publish(kb, true, site);
    try (BrowserContext context = browser.chromium().newContext()) {
      Page page = context.newPage();
      List<String> complaints = new ArrayList<>();
      page.onConsoleMessage(message -> complaints.add(message.text()));
      page.onPageError(complaints::add);
      page.onDialog(
          dialog -> {
            complaints.add("dialog " + dialog.message());
            dialog.dismiss();
          });
      walk(page, site, kb, hostile);
      search(page, site);
      assertEquals(List.of(), complaints);
    }
  }

  private static void walk(Page page, Path site, KnowledgeBase kb, String hostile) {
    String model = kb.equipment().models().firstKey();
    for (String symptom : kb.symptoms().keySet()) {
      page.navigate("about:blank");
      page.navigate(
          site.toUri() + "diagnose.html#model=" + model + "&software=?&symptom=" + symptom);
      page.waitForFunction(
          "() => !['', 'loading'].includes(document.getElementById('guided').dataset.status)");
      assertEquals(0, page.locator("#guided script, #guided img, #guided svg[onload]").count());
      String shown = page.textContent("#guided").replaceAll("\\s+", " ");
      assertTrue(shown.contains(hostile.substring(0, 20)), symptom);
    }
  }

  private static void search(Page page, Path site) {
    page.navigate(site.toUri() + "search.html#q=ice");
    page.waitForSelector("main a");
    assertEquals(0, page.locator("main script, main img").count());
  }
}
