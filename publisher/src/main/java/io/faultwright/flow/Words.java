package io.faultwright.flow;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Small helpers for short texts. */
final class Words {
  private Words() {}

  static String upperFirst(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** The text to stand within a line: a word in capitals, such as a model number, stays. */
  static String lowerFirst(String text) {
    return text.length() > 1 && Character.isLowerCase(text.charAt(1))
        ? text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1)
        : text;
  }

  /** {@code a}, {@code a or b}, {@code a, b or c}. */
  static String or(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }

  /** The first word as it is, the others to stand within a line. */
  static List<String> inLine(List<String> words) {
    return Stream.concat(words.stream().limit(1), words.stream().skip(1).map(Words::lowerFirst))
        .toList();
  }
}
