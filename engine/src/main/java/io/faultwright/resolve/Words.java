package io.faultwright.resolve;

import java.util.Collection;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Small matters of wording. */
final class Words {
  private static final int LONGEST = 60;
  private static final Pattern BLANKS = Pattern.compile("\\s{2,}|[\\s&&[^ ]]");

  private Words() {}

  /** The text in backticks, on one line, shortened where it is long. */
  static String quoted(String text) {
    String line = oneLine(text).replace('`', '\'');
    int shown =
        line.offsetByCodePoints(0, Math.min(LONGEST, line.codePointCount(0, line.length())));
    return "`" + line.substring(0, shown) + (shown < line.length() ? "…" : "") + "`";
  }

  /** The text with single blanks in place of line breaks and runs of blanks. */
  static String oneLine(String text) {
    return BLANKS.matcher(text.strip()).replaceAll(" ");
  }

  /** Every text in backticks, with commas between them. */
  static String quoted(Collection<String> texts) {
    return texts.stream().map(Words::quoted).collect(Collectors.joining(", "));
  }

  /** Every text in backticks, with {@code and} between them. */
  static String and(Collection<String> texts) {
    return texts.stream().map(Words::quoted).collect(Collectors.joining(" and "));
  }

  /** {@code discharge-pressure} as {@code Discharge pressure}. */
  static String title(String id) {
    String spaced = id.replace('-', ' ');
    return spaced.isEmpty()
        ? spaced
        : spaced.substring(0, 1).toUpperCase(Locale.ROOT) + spaced.substring(1);
  }
}
