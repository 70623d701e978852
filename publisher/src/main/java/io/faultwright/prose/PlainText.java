package io.faultwright.prose;

/** Text as both HTML and XML can carry it. */
public final class PlainText {
  private static final int REPLACEMENT = 0xFFFD;

  private PlainText() {}

  /** The text with every character that XML 1.0 forbids replaced by U+FFFD. */
  public static String of(String text) {
    return text.codePoints().allMatch(PlainText::allowed)
        ? text
        : text.codePoints()
            .map(point -> allowed(point) ? point : REPLACEMENT)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
  }

  /** XML 1.0 production {@code Char}, less C1 controls and noncharacters, which HTML refuses. */
  private static boolean allowed(int point) {
    boolean space = point == '\t' || point == '\n';
    boolean control = point < 0x20 || point >= 0x7F && point < 0xA0;
    boolean surrogate = point >= 0xD800 && point <= 0xDFFF;
    boolean nonCharacter = (point & 0xFFFE) == 0xFFFE || point >= 0xFDD0 && point <= 0xFDEF;
    return space || !control && !surrogate && !nonCharacter;
  }
}
