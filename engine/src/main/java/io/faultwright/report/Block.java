package io.faultwright.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Labelled lines below a message, with the texts in one column. */
final class Block {
  private static final int LABEL = 15;

  private Block() {}

  /** A label and its lines; nothing at all without lines. */
  static String of(String label, List<String> lines) {
    String indent = " ".repeat(LABEL + 2);
    return lines.isEmpty()
        ? ""
        : String.format(Locale.ROOT, "  %-" + LABEL + "s", label)
            + lines.stream().map(Columns::printable).collect(Collectors.joining("\n" + indent))
            + "\n";
  }

  /** A label and a text; nothing at all without a text. */
  static String of(String label, String text) {
    return of(label, text.lines().toList());
  }
}
