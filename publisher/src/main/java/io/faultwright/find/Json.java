package io.faultwright.find;

import java.util.Locale;

/** Texts as JSON that may also stand in a script or a page. */
final class Json {
  private Json() {}

  /** The text in quotes, with all escaped that could end a string, a script or a line. */
  static String text(String text) {
    StringBuilder out = new StringBuilder("\"");
    text.chars().forEach(c -> append(out, (char) c));
    return out.append('"').toString();
  }

  private static void append(StringBuilder out, char c) {
    if (c == '"' || c == '\\') {
      out.append('\\').append(c);
    } else if (isPlain(c)) {
      out.append(c);
    } else {
      out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
    }
  }

  private static boolean isPlain(char c) {
    boolean markup = c == '<' || c == '>' || c == '&';
    boolean line = c == '\u2028' || c == '\u2029';
    return !Character.isISOControl(c) && !Character.isSurrogate(c) && !markup && !line;
  }
}
