package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two published editions of a handbook, one after the other at the same host. */
class NewEditionTest {
  private static final String JOB =
      "diagnose.html#model=FL-12G&software=2.10&symptom=ice-left&r.fan-running=yes";

  private static SortedMap<String, byte[]> edition(UnaryOperator<String> write, Path to)
      throws IOException {
    SortedMap<String, byte[]> site =
        new TreeMap<>(
            Published.publish(new SampleBook(write).build(), Options.release(false), to).files());
    site.keySet().removeIf(path -> path.startsWith("."));
    return site;
  }

  private static String next(String text) {
    return switch (text) {
      case "7" -> "8";
      case "Because of restricted." -> "Because the valve lets too little through.";
      default -> text;
    };
  }

  private static String revision(Page page) {
    return (String) page.evaluate("faultwright.book.revision");
  }

  @Test
  void theJobIsFinishedWithTheOldOneAndTheNewOneIsTakenWhenAskedFor(@TempDir Path temp)
      throws IOException {
    SortedMap<String, byte[]> old = edition(text -> text, temp.resolve("7"));
    SortedMap<String, byte[]> fresh = edition(NewEditionTest::next, temp.resolve("8"));
    List<String> complaints = new ArrayList<>();
    try (Browser browser = Browser.open();
        Host host = new Host();
        BrowserContext context = browser.chromium().newContext()) {
      Page page = context.newPage();
      page.onPageError(complaints::add);
      host.put("", old);
      page.navigate(host.address(JOB));
      page.waitForFunction("() => navigator.serviceWorker.controller !== null");
      page.waitForSelector("#guided-step .answers button");

      host.put("", fresh);
      page.reload();
      page.waitForSelector(".edition-notice");
      assertTrue(page.textContent(".edition-notice").contains("after this job"));
      assertEquals(0, page.locator(".edition-notice button").count());
      assertEquals("7", revision(page));

      page.navigate(host.address("index.html"));
      page.waitForSelector(".edition-notice button");
      String notice = page.textContent(".edition-notice");
      assertTrue(notice.contains("A new edition is ready: revision 8."), notice);
      assertEquals(
          List.of("Changed: Ice is left on the coil after a hot-gas defrost"),
          page.locator(".edition-notice li").allTextContents());
      page.click(".edition-notice button >> nth=0");
      page.waitForFunction("() => !document.querySelector('.edition-notice')");

      context.setOffline(true);
      host.put("", new TreeMap<>());
      page.navigate(host.address(JOB));
      page.waitForSelector("#guided-step .answers button");
      assertEquals("8", revision(page));
    }
    assertEquals(List.of(), complaints);
  }
}
