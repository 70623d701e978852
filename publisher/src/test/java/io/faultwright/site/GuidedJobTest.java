package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.input.CaseFile;
import io.faultwright.input.CaseInput;
import io.faultwright.input.TableUse;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.GivenCase;
import io.faultwright.resolve.Resolver;
import io.faultwright.run.Runner;
import io.faultwright.syntax.FolderReader;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job on the guided page from the nameplate to the hand-over, as a technician does it. */
class GuidedJobTest {
  private static final Path RULES = Path.of("..", "rules", "pass-through-dishwashers");
  private static final String TO_THE_RESULT =
      "#model=BK-500&symptom=ware-not-clean&r.filters=clean&r.wash-arms=turn"
          + "&r.wash-temperature=131+%C2%B0F&r.doser-hose=can-empty";

  @TempDir static Path temp;
  private static Browser browser;

  @BeforeAll
  static void publish() throws IOException {
    browser = Browser.open();
    KnowledgeBase kb = Resolver.resolve(FolderReader.read(RULES));
    Published.publish(kb, Options.release(false), temp.resolve("site"));
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static Page open(BrowserContext context, String address) {
    Page page = context.newPage();
    page.navigate(temp.resolve("site").toUri() + "diagnose.html" + address);
    page.waitForSelector("#guided:not([hidden])");
    return page;
  }

  /** Waits for the screen that follows an answer. */
  private static void answer(Page page, String status) {
    page.waitForFunction(
        "wanted => document.getElementById('guided').dataset.status === wanted", status);
  }

  /** Tab until something is focused, then press it. */
  private static void press(Page page, String selector) {
    for (int i = 0; i < 80; i++) {
      if ((boolean) page.evaluate("wanted => document.activeElement.matches(wanted)", selector)) {
        page.keyboard().press("Enter");
        return;
      }
      page.keyboard().press("Tab");
    }
    throw new AssertionError("no way by the keyboard to " + selector);
  }

  @Test
  void aWholeDiagnosisByTheKeyboardAlone() {
    try (BrowserContext context = browser.chromium().newContext()) {
      Page page = open(context, "");
      answer(page, "machine");
      for (int i = 0; !"guided-model".equals(focus(page)); i++) {
        assertTrue(i < 40, "the field for the model is not reached");
        page.keyboard().press("Tab");
      }
      page.keyboard().type("bk 500");
      page.keyboard().press("Enter");
      answer(page, "complaint");
      press(page, "[data-symptom='ware-not-clean']");
      answer(page, "nothing-yet");
      assertEquals("guided-question", focus(page));
      page.waitForTimeout(600);
      press(page, "[data-value='clean']");
      page.waitForFunction("document.getElementById('guided').dataset.next === 'wash-arms'");
      page.waitForTimeout(600);
      press(page, "[data-value='stuck']");
      answer(page, "answered");
      assertEquals("fault:wash-arm-blocked", page.getAttribute("#guided", "data-answers"));
      assertEquals("guided-question", focus(page));
    }
  }

  private static Object focus(Page page) {
    return page.evaluate("document.activeElement.id");
  }

  @Test
  void aSavedFieldCaseComesToTheSame() throws IOException {
    try (BrowserContext context = browser.chromium().newContext()) {
      Page page = open(context, TO_THE_RESULT);
      answer(page, "answered");
      String said = page.getAttribute("#guided", "data-answers");
      page.click("#guided-hand-over");
      page.fill("#guided-job", "job \"7\" <b>: - # &");
      page.fill("#guided-remark", "said: {no}\nnext line");
      Download file = page.waitForDownload(() -> page.click("#guided-save"));
      Path saved = temp.resolve("case.yaml");
      file.saveAs(saved);
      GivenCase imported = imported(saved);
      KnowledgeBase kb = Resolver.resolve(FolderReader.read(RULES));
      Runner runner = new Runner(kb, RuleCompiler.compile(kb));
      assertEquals(
          "answered [" + said + "]",
          GuidedPage.said(
              runner.verdict(imported.recorded().symptom(), imported.recorded().given())));
      assertTrue(imported.recorded().origin().orElse("").contains("job \"7\" <b>: - # &"));
    }
  }

  /** Read as `run` and `field` read jobs from outside. */
  private static GivenCase imported(Path saved) throws IOException {
    KnowledgeBase kb = Resolver.resolve(FolderReader.read(RULES));
    try (BufferedReader text = Files.newBufferedReader(saved)) {
      CaseInput.Item only = CaseFile.open("case.yaml", text, kb, TableUse.OWN).next().orElseThrow();
      return Resolver.resolution(FolderReader.read(RULES))
          .intake()
          .read(only.entry().orElseThrow())
          .cases()
          .get(0);
    }
  }

  @Test
  void theJobIsTheAddress() {
    try (BrowserContext context = browser.chromium().newContext()) {
      Page page = open(context, TO_THE_RESULT);
      answer(page, "answered");
      page.goBack();
      Page again = open(context, TO_THE_RESULT.replace("can-empty", "full"));
      answer(again, "answered");
      assertEquals("fault:water-too-hard", again.getAttribute("#guided", "data-answers"));
    }
  }

  @Test
  void anAnswerIsTakenBack() {
    try (BrowserContext context = browser.chromium().newContext()) {
      Page page = open(context, "#model=BK-500&symptom=ware-not-clean");
      answer(page, "nothing-yet");
      page.waitForTimeout(600);
      page.click("[data-value='dirty']");
      page.waitForFunction("document.getElementById('guided').dataset.answers !== ''");
      page.click("#guided-back");
      page.waitForFunction("document.getElementById('guided').dataset.answers === ''");
      assertFalse(page.url().contains("r.filters"), page.url());
    }
  }

  @Test
  void whatWasNotedOfAJobDoesNotGoAlongToAnother() {
    try (BrowserContext context = browser.chromium().newContext()) {
      Page page = open(context, TO_THE_RESULT);
      answer(page, "answered");
      page.click("#guided-hand-over");
      page.fill("#guided-job", "4711");
      page.goBack();
      answer(page, "answered");
      page.goForward();
      page.waitForSelector("#guided-job");
      assertEquals("4711", page.inputValue("#guided-job"));
      page.navigate(page.url().replaceAll("#.*", TO_THE_RESULT.replace("BK-500", "GH-900")));
      answer(page, "answered");
      page.click("#guided-hand-over");
      page.waitForSelector("#guided-job");
      assertEquals("", page.inputValue("#guided-job"));
    }
  }

  @Test
  void aReadingThatCannotBeTakenIsNoDeadEnd() {
    try (BrowserContext context = browser.chromium().newContext()) {
      Page page = open(context, "#model=BK-500&symptom=ware-not-clean&r.filters=untaken");
      answer(page, "nothing-yet");
      assertTrue(page.isVisible("#guided-question"));
      assertFalse(page.getAttribute("#guided", "data-next").isEmpty());
    }
  }

  @Test
  void aStickerBringsTheModel() {
    try (BrowserContext context = browser.chromium().newContext()) {
      Page page = open(context, "?model=GH-900");
      answer(page, "complaint");
      assertTrue(page.url().contains("#model=GH-900"), page.url());
    }
  }

  @Test
  void nothingLeavesTheFolder() {
    try (BrowserContext context = browser.chromium().newContext()) {
      List<String> elsewhere = new ArrayList<>();
      String folder = temp.resolve("site").toUri().toString();
      Page page = context.newPage();
      page.onRequest(
          request -> {
            if (!request.url().startsWith(folder)) {
              elsewhere.add(request.url());
            }
          });
      page.navigate(folder + "diagnose.html" + TO_THE_RESULT);
      answer(page, "answered");
      page.click("#guided-hand-over");
      assertEquals(List.of(), elsewhere);
    }
  }
}
