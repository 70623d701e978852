package io.faultwright.site;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The rules of axe-core, run in the page itself: the checker's own driver opens a window for each
 * check, which takes long.
 */
public final class Axe {
  private static final List<String> RULES =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

  /** To be run in every page of a context before anything else. */
  public static final String SCRIPT = script();

  private static final String RUN =
      "async rules => (await axe.run({ runOnly: rules, resultTypes: ['violations'] })).violations"
          + ".map(found => found.id + ': ' + found.nodes[0].html)";

  private Axe() {}

  /** Adds every rule that a page breaks as it is now. */
  public static void check(Page page, String what, List<String> told) {
    for (Object found : (List<?>) page.evaluate(RUN, RULES)) {
      told.add(what + " " + found);
    }
  }

  private static String script() {
    try (InputStream in = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
