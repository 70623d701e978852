package io.faultwright.site;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;

/**
 * The installed Chromium, driven by a test; without one the test is skipped. Where it is there, the
 * one without windows is taken: it starts in half the time.
 */
public final class Browser implements AutoCloseable {
  private static final String HOW =
      "no Chromium found: install it (Debian: `apt-get install chromium`) or name it in the"
          + " environment variable CHROMIUM";
  private static final List<String> QUIET =
      List.of(
          "--no-sandbox",
          "--disable-gpu",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync");

  private final Playwright playwright;
  private final com.microsoft.playwright.Browser chromium;

  private Browser(Path executable) {
    playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    chromium =
        playwright
            .chromium()
            .launch(new BrowserType.LaunchOptions().setExecutablePath(executable).setArgs(QUIET));
  }

  /**
   * Opens it.
   *
   * @throws org.opentest4j.TestAbortedException without one, or fails where the environment says
   *     {@code REQUIRE_BROWSER=true}
   */
  public static Browser open() {
    Optional<Path> executable = executable();
    if (executable.isEmpty() && Boolean.parseBoolean(System.getenv("REQUIRE_BROWSER"))) {
      Assertions.fail(HOW);
    }
    assumeTrue(executable.isPresent(), HOW);
    return new Browser(executable.orElseThrow());
  }

  private static Optional<Path> executable() {
    return Stream.concat(
            Stream.ofNullable(System.getenv("CHROMIUM")),
            Stream.of(
                "/usr/bin/chromium-headless-shell",
                "/usr/bin/chromium",
                "/usr/bin/chromium-browser",
                "/usr/bin/google-chrome"))
        .map(Path::of)
        .filter(Files::isExecutable)
        .findFirst();
  }

  public com.microsoft.playwright.Browser chromium() {
    return chromium;
  }

  @Override
  public void close() {
    chromium.close();
    playwright.close();
  }
}
