package io.faultwright.report;

import io.faultwright.finding.FindingKind;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The page {@code docs/findings} has of a kind of finding, without its examples.
 *
 * @param summary one line: what the finding says
 * @param help what it means and how to mend it, as paragraphs of plain words
 */
record FindingPage(String summary, String help) {
  private static final List<String> KEPT =
      List.of("What it means", "Why it matters at the machine", "How to mend it");

  static FindingPage of(FindingKind kind) {
    List<String> parts = Arrays.asList(text(kind).split("\n## "));
    String summary = parts.get(0).substring(parts.get(0).indexOf("**: ") + "**: ".length());
    String help =
        parts.stream()
            .filter(part -> KEPT.contains(part.lines().findFirst().orElse("")))
            .map(FindingPage::paragraphs)
            .collect(Collectors.joining("\n\n"));
    return new FindingPage(summary.strip(), help);
  }

  private static String paragraphs(String part) {
    String body = part.substring(part.indexOf('\n')).replaceAll("(?s)```.*?```", "");
    return Arrays.stream(body.strip().split("\n\\s*\n"))
        .map(paragraph -> unlinked(paragraph.strip().replaceAll("\\s*\n\\s*", " ")))
        .filter(paragraph -> !paragraph.isEmpty())
        .collect(Collectors.joining("\n\n"));
  }

  /** Links between pages lead nowhere from a report. */
  private static String unlinked(String paragraph) {
    return paragraph.replaceAll("\\[([^\\]]*)\\]\\([^)]*\\)", "$1");
  }

  private static String text(FindingKind kind) {
    String name = "/io/faultwright/findings/" + kind.slug() + ".md";
    try (InputStream page = FindingPage.class.getResourceAsStream(name)) {
      return new String(page.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
