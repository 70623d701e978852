package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.SAXException;

/** A handbook that is published in several languages. */
class LanguagesTest {
  private static final String RULES =
      """
      handbook:
        title: Freezers
        maker: Brantmoor Cold
        revision: "1"
        date: 2026-03-02
        language: en
        translated-to: [de, ar]
        disclaimer: For technicians.
      readings:
        line: { title: Suction line, ask: "How warm is it?", unit: °C, range: -40 to 60 }
      cautions:
        cold: { signal: danger, text: The line burns the skin., covers: outside }
      faults:
        broken:
          title: The valve is broken
          remedy: [Replace it.]
          verify: [See it run.]
          cautions: cold
      symptoms:
        warm:
          title: The room is warm
          rules:
            warm: { when: { line: above 2.5 °C }, conclude: broken, because: No liquid comes. }
            cold: { when: { line: at most 2.5 °C }, escalate: hotline, because: The rules end here. }
      translations:
        ar: { Freezers: مجمدات }
        de:
          Suction line: Saugleitung
          "How warm is it?": Wie warm ist sie?
          The room is warm: Der Raum ist zu warm
      """;

  private static final Pattern LINK = Pattern.compile("(?:href|src)=\"([^\"#]+)[^\"]*\"");

  /** Texts of charts that reach out of the frame of their page. */
  private static final String OUTSIDE =
      """
      () => [...document.querySelectorAll("svg.chart")].flatMap((chart) => {
        const frame = chart.querySelector(".frame rect").getBoundingClientRect();
        return [...chart.querySelectorAll("text")]
          .filter((text) => {
            const box = text.getBoundingClientRect();
            return box.left < frame.left - 1 || box.right > frame.right + 1;
          })
          .map((text) => text.textContent);
      })
      """;

  @TempDir static Path folder;

  private static Published published;

  @BeforeAll
  static void publish() throws IOException {
    published =
        Published.publish(
            Resolver.resolve(new Sources(List.of(new SourceFile("handbook.yaml", RULES)))),
            Options.release(false),
            folder.resolve("site"));
  }

  private static Set<String> files(String language) {
    return published.files().keySet().stream()
        .filter(path -> path.startsWith(language + "/"))
        .map(path -> path.substring(language.length() + 1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void everyLanguageHasItsPagesAndSharesTheRest() {
    assertEquals(files("de"), files("ar"));
    assertTrue(files("de").containsAll(Set.of("index.html", "symptom/warm.html", "a-z.html")));
    assertTrue(files("de").contains("charts/warm-1.svg"));
    assertFalse(files("de").stream().anyMatch(path -> path.matches("style.css|fonts/.*")));
    assertTrue(published.files().keySet().containsAll(files("de")));
  }

  @Test
  void pagesAndChartsSpeakTheLanguage() {
    String page = published.text("de/symptom/warm.html");
    assertTrue(page.contains("<html lang=\"de\" dir=\"ltr\">"), page);
    assertTrue(page.contains("Der Raum ist zu warm"), page);
    assertTrue(page.contains("über 2,5 °C"), page);
    assertTrue(page.contains("GEFAHR"), page);
    assertTrue(published.text("de/charts/warm-1.svg").contains("Höchstens 2,5 °C"));
    assertTrue(published.text("symptom/warm.html").contains("above 2.5 °C"));
  }

  @Test
  void aLanguageFromRightToLeftKeepsItsDirection() {
    assertTrue(published.text("ar/index.html").contains("<html lang=\"ar\" dir=\"rtl\">"));
    assertTrue(published.text("ar/index.html").contains("What is the complaint?"));
  }

  @Test
  void textsOfAChartStayInItsFrameOnAPageFromRightToLeft() {
    try (Browser browser = Browser.open();
        Page page = browser.chromium().newPage()) {
      for (String path : List.of("ar/symptom/warm.html", "symptom/warm.html")) {
        page.navigate(folder.resolve("site").resolve(path).toUri().toString());
        page.evaluate("document.fonts.ready.then(() => 1)");
        assertEquals(List.of(), page.evaluate(OUTSIDE), path);
      }
    }
  }

  @Test
  void everyPageLeadsToTheSamePageInTheOtherLanguages() {
    String page = published.text("de/symptom/warm.html");
    String head = "<link rel=\"alternate\" hreflang=\"en\" href=\"../../symptom/warm.html\">";
    assertTrue(page.contains(head), page);
    String link = "<a href=\"../../ar/symptom/warm.html\" hreflang=\"ar\" lang=\"ar\"";
    assertTrue(page.contains(link), page);
    assertTrue(published.text("symptom/warm.html").contains(">Deutsch</a>"));
  }

  @Test
  void everyLinkLeadsToAFile() {
    for (String path : published.pages().toList()) {
      Path page = Path.of(path);
      Matcher links = LINK.matcher(published.text(path));
      while (links.find()) {
        Path target = page.resolveSibling(links.group(1)).normalize();
        String file = target.toString().replace('\\', '/');
        assertTrue(published.files().containsKey(file), path + " leads to " + file);
      }
    }
  }

  @Test
  void translatedPagesAreValid() throws IOException, SAXException {
    for (String path : List.of("de/index.html", "ar/symptom/warm.html")) {
      assertEquals(List.of(), HtmlCheck.errors(folder.resolve("site").resolve(path)));
    }
    assertTrue(Files.exists(folder.resolve("site")));
  }
}
