package io.faultwright.analysis.translation;

import io.faultwright.model.Catalogue;

/** A text in a message: in backticks, on one line, shortened where it is long. */
final class Quotes {
  private static final int LONGEST = 60;

  private Quotes() {}

  static String of(String text) {
    String line = Catalogue.key(text).replace('`', '\'');
    int length = line.codePointCount(0, line.length());
    int shown = line.offsetByCodePoints(0, Math.min(LONGEST, length));
    return "`" + line.substring(0, shown) + (shown < line.length() ? "…" : "") + "`";
  }
}
