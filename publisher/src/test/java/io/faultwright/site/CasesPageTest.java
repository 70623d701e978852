package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import io.faultwright.adequacy.Measured;
import io.faultwright.flow.ChartWalk;
import io.faultwright.flow.Demos;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.CasesSheets;
import io.faultwright.pipeline.CaseMeasure;
import io.faultwright.pipeline.Stop;
import io.faultwright.pipeline.Watch;
import io.faultwright.render.html.CasesHtml;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page on the recorded cases, as the checker of the W3C and a browser see it. */
class CasesPageTest {
  private static final KnowledgeBase KB = Demos.all().get(1);

  @TempDir private static Path folder;
  private static Path page;
  private static String html;

  @BeforeAll
  static void write() throws Exception {
    String symptom = KB.symptoms().firstKey();
    CaseMeasure.Options options = new CaseMeasure.Options(Optional.of(symptom), true, false);
    Measured measured =
        new CaseMeasure(options, ChartWalk::goals, new Stop(Optional.empty()), Watch.NOBODY)
            .measure(KB);
    html = new CasesHtml().print(CasesSheets.of(KB, measured));
    page = Files.writeString(folder.resolve("cases.html"), html);
  }

  @Test
  void isValidHtml() throws Exception {
    assertEquals(List.of(), HtmlCheck.errors(page));
  }

  @Test
  void headingsOfTablesSayWhatTheyHead() {
    assertTrue(html.contains("<th scope=\"row\">"), html);
    assertTrue(html.contains("<th scope=\"col\">"), html);
  }

  @Test
  void fitsAPhoneAndCanBeRead() {
    try (Browser browser = Browser.open();
        BrowserContext context =
            browser
                .chromium()
                .newContext(
                    new com.microsoft.playwright.Browser.NewContextOptions()
                        .setViewportSize(390, 800))) {
      Page shown = context.newPage();
      shown.navigate(page.toUri().toString());
      assertEquals(390, shown.evaluate("document.documentElement.scrollWidth"));
      assertEquals(List.of(), shown.evaluate(Contrast.SCRIPT));
    }
  }
}
