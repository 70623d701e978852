package io.faultwright.site;

import com.google.gson.JsonObject;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ServiceWorkerPolicy;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;

/**
 * Prints what pages of a published handbook transfer, compressed, and when they first show
 * something on a processor slowed down four times.
 *
 * <p>Arguments: the folder of the handbook, then addresses in it.
 */
public final class PagePace {
  private static final Pattern PLAIN = Pattern.compile(".*\\.(woff2|png)");
  private static final Pattern CHART = Pattern.compile("(?s)<figure class=\"chart\".*?</figure>");
  private static final String FIRST =
      "Math.round(performance.getEntriesByName('first-contentful-paint')[0].startTime)";

  private final SortedMap<String, byte[]> site;
  private final Host host = new Host();

  private PagePace(SortedMap<String, byte[]> site) {
    this.site = site;
    host.put("", site);
  }

  public static void main(String[] args) throws IOException {
    PagePace pace = new PagePace(Published.read(Path.of(args[0])).files());
    try (Browser browser = Browser.open()) {
      for (String address : List.of(args).subList(1, args.length)) {
        pace.measure(browser, address);
      }
    }
    pace.host.close();
  }

  private void measure(Browser browser, String address) throws IOException {
    host.asked();
    try (BrowserContext context =
        browser
            .chromium()
            .newContext(
                new com.microsoft.playwright.Browser.NewContextOptions()
                    .setViewportSize(375, 812)
                    .setServiceWorkers(ServiceWorkerPolicy.BLOCK))) {
      Page page = context.newPage();
      JsonObject slow = new JsonObject();
      slow.addProperty("rate", 4);
      context.newCDPSession(page).send("Emulation.setCPUThrottlingRate", slow);
      page.navigate(host.address(address));
      page.waitForTimeout(1500);
      Object first = page.evaluate(FIRST);
      int all = 0;
      int own = 0;
      for (String path : host.asked().stream().distinct().toList()) {
        int size = transferred(path.isEmpty() ? "index.html" : path);
        all += size;
        own += path.matches("[^/]*\\.(js|css)") && !path.contains("index") ? size : 0;
      }
      System.out.printf(
          Locale.ROOT,
          "%s: %.1f KB, of it script and style %.1f KB, first shown after %s ms%n",
          address,
          all / 1000.0,
          own / 1000.0,
          first);
    }
  }

  /** Without the charts that stand in a page. */
  private int transferred(String path) throws IOException {
    byte[] content = site.getOrDefault(path, new byte[0]);
    if (PLAIN.matcher(path).matches()) {
      return content.length;
    }
    if (path.endsWith(".html")) {
      content = CHART.matcher(new String(content, "UTF-8")).replaceAll("").getBytes("UTF-8");
    }
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
      gzip.write(content);
    }
    return packed.size();
  }
}
