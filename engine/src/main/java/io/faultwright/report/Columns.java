package io.faultwright.report;

import java.lang.Character.UnicodeScript;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** How many columns of a terminal a text takes. */
public final class Columns {
  private static final int TAB = 4;
  private static final int WIDTH = 84;

  private static final Set<UnicodeScript> WIDE =
      Set.of(
          UnicodeScript.HAN,
          UnicodeScript.HIRAGANA,
          UnicodeScript.KATAKANA,
          UnicodeScript.HANGUL,
          UnicodeScript.BOPOMOFO,
          UnicodeScript.YI);

  private Columns() {}

  /** The text with tabs as blanks, and with anything that would steer a terminal made visible. */
  public static String printable(String text) {
    return text.codePoints().mapToObj(Columns::printable).collect(Collectors.joining());
  }

  private static String printable(int codePoint) {
    if (codePoint == '\t') {
      return " ".repeat(TAB);
    }
    return steersTerminal(codePoint) ? "\uFFFD" : Character.toString(codePoint);
  }

  private static boolean steersTerminal(int codePoint) {
    return Character.isISOControl(codePoint)
        || codePoint >= 0x202A && codePoint <= 0x202E
        || codePoint >= 0x2066 && codePoint <= 0x2069;
  }

  /** Entries with commas between, as many on a line as have room. */
  static List<String> wrapped(List<String> entries) {
    List<String> lines = new ArrayList<>();
    for (String entry : entries) {
      int last = lines.size() - 1;
      if (last >= 0 && width(lines.get(last) + " " + entry) < WIDTH) {
        lines.set(last, lines.get(last) + " " + entry + ",");
      } else {
        lines.add(entry + ",");
      }
    }
    int last = lines.size() - 1;
    lines.set(last, lines.get(last).substring(0, lines.get(last).length() - 1));
    return lines;
  }

  /** Columns the text takes after {@link #printable}. */
  public static int width(String text) {
    return text.codePoints().map(Columns::width).sum();
  }

  private static int width(int codePoint) {
    if (codePoint == '\t') {
      return TAB;
    }
    if (takesNoRoom(codePoint)) {
      return 0;
    }
    return isWide(codePoint) ? 2 : 1;
  }

  private static boolean takesNoRoom(int codePoint) {
    int type = Character.getType(codePoint);
    return type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || codePoint == 0x200B
        || codePoint == 0x200D
        || codePoint >= 0xFE00 && codePoint <= 0xFE0F;
  }

  /** East Asian wide and full-width characters and emoji (Unicode Standard Annex 11). */
  private static boolean isWide(int codePoint) {
    return codePoint >= 0x1100
        && (codePoint >= 0x3000 && codePoint <= 0x303E
            || codePoint >= 0xFF01 && codePoint <= 0xFF60
            || codePoint >= 0xFFE0 && codePoint <= 0xFFE6
            || codePoint >= 0x1F300 && codePoint <= 0x1FAFF
            || isWideScript(codePoint));
  }

  /** Half-width katakana and hangul are the exceptions of their scripts. */
  private static boolean isWideScript(int codePoint) {
    boolean halfWidth = codePoint >= 0xFF61 && codePoint <= 0xFFDC;
    boolean joiningHangul = codePoint >= 0x1160 && codePoint <= 0x11FF;
    return !halfWidth && !joiningHangul && WIDE.contains(UnicodeScript.of(codePoint));
  }
}
