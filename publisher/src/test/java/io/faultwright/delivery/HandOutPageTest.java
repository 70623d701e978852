package io.faultwright.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import io.faultwright.site.Axe;
import io.faultwright.site.Browser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A participant's page, used in a browser from a file and without a network. */
class HandOutPageTest {
  private static final String ADA = "Ada Nør";
  private static final String HOSTILE = SamplePages.HOSTILE;

  @TempDir static Path temp;
  private static Browser browser;
  private static HandOut plain;

  private static final List<String> COMPLAINTS = Collections.synchronizedList(new ArrayList<>());
  private static BrowserContext context;
  private static Page page;

  @BeforeAll
  static void write() throws IOException {
    browser = Browser.open();
    plain = SmallQuiz.MADE.handOut(2);
    SamplePages.write(temp, plain);
    context =
        browser
            .chromium()
            .newContext(
                new NewContextOptions().setTimezoneId("America/Bogota").setAcceptDownloads(true));
    context.setOffline(true);
    context.onRequest(
        request -> {
          if (!request.url().startsWith("file:") && !request.url().startsWith("blob:")) {
            COMPLAINTS.add("asks for " + request.url());
          }
        });
    context.onConsoleMessage(message -> COMPLAINTS.add(message.text()));
    context.onWebError(error -> COMPLAINTS.add(error.error()));
    page = context.newPage();
  }

  @AfterAll
  static void closeBrowser() {
    if (browser != null) {
      browser.close();
    }
  }

  /** As a browser has it that never saw the page before. */
  private static void open(String name, int width) {
    page.setViewportSize(width, 800);
    page.clock().setFixedTime("2026-04-14T15:32:40Z");
    page.navigate("about:blank");
    page.navigate(temp.resolve(name + ".html").toUri().toString());
    page.evaluate("localStorage.clear()");
    page.reload();
  }

  @AfterEach
  void nobodyComplained() {
    List<String> told = List.copyOf(COMPLAINTS);
    COMPLAINTS.clear();
    assertEquals(List.of(), told);
  }

  private void go(String screen) {
    page.navigate(temp.resolve("plain.html").toUri() + "#" + screen);
    page.waitForSelector("#" + screen + ":not(.away)");
  }

  private void choose(int question, int choice) {
    page.click("#q-" + question + " label:nth-of-type(" + choice + ")");
  }

  private void next() {
    page.click("#next");
  }

  private Path saved() {
    Download download = page.waitForDownload(() -> page.click("#save"));
    assertEquals("morning-002.json", download.suggestedFilename());
    return download.path();
  }

  private static SavedAnswers checked(String text) throws IOException {
    return SavedAnswers.checked(text, plain);
  }

  /** As somebody does it who changes their mind, and whose phone dies in between. */
  @ParameterizedTest
  @ValueSource(ints = {375, 1280})
  void answersAreGivenChangedKeptAndSaved(int width) throws IOException {
    open("plain", width);
    assertTrue(page.isVisible("text=Hand in by 2026-04-21."));
    page.fill("#name", ADA);
    next();
    choose(1, 2);
    next();
    choose(2, 1);
    next();
    choose(3, 3);
    page.click("#back");
    choose(2, 3);
    page.goBack();
    assertTrue(page.isVisible("#q-3"));
    assertEquals("3 of 8 answered", page.textContent("#answered"));
    page.reload();
    assertTrue(page.isVisible("#q-3"), "the same question as before");
    assertTrue(page.isChecked("#q-3 input[value='3']"));
    page.click("#clear-3");
    page.click("#overview");
    assertEquals("6 questions are not answered. They count as wrong.", page.textContent("#open"));
    assertEquals("answered", page.textContent("#state-2"));
    assertEquals("open", page.textContent("#state-3"));
    page.click(".overview a[href='#q-8']");
    choose(8, 1);
    next();
    SavedAnswers saved = checked(Files.readString(saved()));
    assertEquals(List.of(2, 3, 0, 0, 0, 0, 0, 1), saved.choices());
    assertEquals(ADA, saved.name());
    assertEquals("2026-04-14T10:32", saved.handedIn());
  }

  @Test
  void whatIsSavedAgainIsTheSameUntilSomethingChanges() throws IOException {
    open("plain", 375);
    page.fill("#name", ADA);
    go("end");
    String first = Files.readString(saved());
    page.clock().setFixedTime("2026-04-14T16:00:00Z");
    assertEquals(first, Files.readString(saved()));
    assertEquals("Nothing has changed since you saved.", page.textContent("#state"));
    go("q-1");
    choose(1, 1);
    go("end");
    assertEquals("", page.textContent("#state"));
    assertEquals("2026-04-14T11:00", checked(Files.readString(saved())).handedIn());
  }

  @Test
  void aNameIsNeeded() {
    open("plain", 375);
    go("end");
    page.click("#save");
    assertEquals("Write your name first.", page.textContent("#told"));
    page.click("#change-name");
    page.waitForFunction("() => document.activeElement.id === 'name'");
  }

  @Test
  void namesMayBeInAnyScriptOfEightyCharacters() throws IOException {
    open("plain", 375);
    Map<String, String> names =
        Map.of(
            "  Ada \t\u2028 Nør ",
            ADA,
            "محمد بن علي",
            "محمد بن علي",
            "山田 太郎",
            "山田 太郎",
            "A\u030A",
            "Å",
            "\uD842\uDFB7".repeat(80) + "x",
            "\uD842\uDFB7".repeat(80));
    for (Map.Entry<String, String> name : names.entrySet()) {
      go("start");
      page.fill("#name", name.getKey());
      go("end");
      assertEquals(name.getValue(), checked(Files.readString(saved())).name());
    }
  }

  @Test
  void copiedTextIsWhatWouldBeSaved() throws IOException {
    open("plain", 375);
    page.fill("#name", ADA);
    go("end");
    page.click("#copy");
    page.waitForFunction("() => document.getElementById('told').textContent !== ''");
    assertEquals(Files.readString(saved()), page.inputValue("#as-text"));
  }

  @Test
  void sharingHandsOverTheFileOrElseItsText() throws IOException {
    Page alone = page;
    try (Page sharing = context.newPage()) {
      page = sharing;
      page.addInitScript(
          """
          navigator.canShare = (what) => Boolean(what.files);
          navigator.share = async (what) => {
            if (what.files) window.file = await what.files[0].text();
            if (what.files && window.refuses) throw new DOMException("no", "NotAllowedError");
            window.text = what.text;
          };
          """);
      open("plain", 375);
      page.fill("#name", ADA);
      go("end");
      page.click("#share");
      page.waitForFunction("() => document.getElementById('told').textContent");
      String saved = Files.readString(saved());
      assertEquals(saved, page.evaluate("window.file"));
      page.evaluate("window.refuses = true");
      page.click("#share");
      page.waitForSelector("text=Press once more");
      page.click("#share");
      page.waitForFunction("() => window.text");
      assertEquals(saved, page.evaluate("window.text"));
    } finally {
      page = alone;
    }
  }

  @Test
  void forgettingLeavesNothing() {
    open("plain", 375);
    page.fill("#name", ADA);
    go("q-1");
    choose(1, 1);
    go("end");
    page.evaluate("() => { window.confirm = () => true; }");
    page.click("#forget");
    page.waitForSelector("#start:not(.away)");
    assertEquals("", page.inputValue("#name"));
    assertEquals("0 of 8 answered", page.textContent("#answered"));
  }

  @Test
  void germanSpeaksGerman() {
    open("german", 375);
    assertTrue(page.isVisible("text=Bevor Sie beginnen"));
    next();
    assertEquals("Frage 1 von 8", page.textContent("#q-1 h2"));
    choose(1, 1);
    assertEquals("1 von 8 beantwortet", page.textContent("#answered"));
    page.click("#overview");
    page.click("#save");
    assertEquals("Schreiben Sie zuerst Ihren Namen.", page.textContent("#told"));
    String all = page.innerText("body");
    assertFalse(
        Stream.of("Question", "answered", "Save", "Name:")
            .anyMatch(all.replace("Name:", "")::contains),
        all);
  }

  @Test
  void whatIsWrittenIsText() {
    open("hostile", 375);
    assertEquals(HOSTILE, page.textContent("h1"));
    for (String one : List.of("legend", "dt", "dd", ".text")) {
      assertEquals(Set.of(HOSTILE), Set.copyOf(page.locator(one).allTextContents()), one);
    }
    assertEquals(0, page.locator("img, strong").count());
    assertEquals(2, page.locator("script").count());
  }

  @Test
  void noScreenBreaksARuleOfAccessibility() {
    open("plain", 375);
    List<String> told = new ArrayList<>();
    page.fill("#name", ADA);
    page.evaluate(Axe.SCRIPT);
    for (String screen : List.of("start", "q-2", "end")) {
      go(screen);
      if (screen.equals("q-2")) {
        choose(2, 1);
      }
      if (screen.equals("end")) {
        saved();
        page.click("summary");
      }
      look(screen, 375, ColorScheme.LIGHT, told);
      look(screen, 375, ColorScheme.DARK, told);
      look(screen, 1280, ColorScheme.DARK, told);
      look(screen, 1280, ColorScheme.LIGHT, told);
    }
    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
    Axe.check(page, "paper", told);
    assertEquals(8, page.locator("fieldset:visible").count());
    assertEquals(0, page.locator("button:visible").count());
    page.emulateMedia(
        new Page.EmulateMediaOptions().setMedia(Media.SCREEN).setColorScheme(ColorScheme.LIGHT));
    assertEquals(List.of(), told);
  }

  private void look(String screen, int width, ColorScheme scheme, List<String> told) {
    page.setViewportSize(width, 800);
    page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
    Axe.check(page, screen + " " + width + " " + scheme, told);
    assertTrue(fits(), "nothing wider than the page");
    assertEquals(List.of(), tooSmall());
  }

  private boolean fits() {
    return (Boolean)
        page.evaluate(
            "document.documentElement.scrollWidth <= document.documentElement.clientWidth");
  }

  /** Everything to press on is at least 44 CSS pixels high and wide. */
  private Object tooSmall() {
    return page.evaluate(
        """
        Array.from(document.querySelectorAll("button, a, label.choice, input.entry, summary"))
          .filter((one) => one.checkVisibility())
          .filter((one) => { const box = one.getBoundingClientRect(); return box.width < 44 || box.height < 44; })
          .map((one) => one.outerHTML)
        """);
  }

  @Test
  void keysAloneDoIt() throws IOException {
    open("plain", 1280);
    page.focus("#name");
    page.keyboard().type("Bo");
    page.focus("#next");
    page.keyboard().press("Enter");
    page.waitForFunction("() => document.activeElement.id === 'q-1-title'");
    page.keyboard().press("Tab");
    page.keyboard().press("Space");
    page.keyboard().press("ArrowDown");
    page.focus("#overview");
    page.keyboard().press("Enter");
    page.waitForSelector("#end:not(.away)");
    assertEquals(2, checked(Files.readString(saved())).choices().get(0));
  }

  /** RFC 4231, test case 2 (from memory; the JDK computes the same). */
  @Test
  void checkValuesAreThoseOfTheStandard() throws Exception {
    open("plain", 375);
    String key = "Jefe";
    String text = "what do ya want for nothing?";
    String published = "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843";
    assertEquals(published, hmac(key, text));
    assertEquals(
        published, page.evaluate("([k, t]) => faultwright.hmac(k, t)", List.of(key, text)));
    Random random = new Random(7);
    List<List<String>> pairs =
        IntStream.range(0, 300)
            .mapToObj(i -> List.of(text(random, 1 + i % 140), text(random, i)))
            .toList();
    List<String> expected = new ArrayList<>();
    for (List<String> pair : pairs) {
      expected.add(hmac(pair.get(0), pair.get(1)));
    }
    assertEquals(
        expected, page.evaluate("all => all.map(([k, t]) => faultwright.hmac(k, t))", pairs));
  }

  private static String text(Random random, int length) {
    int[] points =
        random.ints(length, 0x20, 0x2FFFF).map(p -> p >= 0xD800 && p < 0xE000 ? 0x41 : p).toArray();
    return new String(points, 0, length);
  }

  private static String hmac(String key, String text) throws Exception {
    Mac mac = Mac.getInstance("HmacSHA256");
    mac.init(new SecretKeySpec(key.getBytes(StandardCharsets.UTF_8), "HmacSHA256"));
    return HexFormat.of().formatHex(mac.doFinal(text.getBytes(StandardCharsets.UTF_8)));
  }
}
