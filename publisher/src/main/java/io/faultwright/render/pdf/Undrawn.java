package io.faultwright.render.pdf;

import io.faultwright.font.Typeface;

/** Finds the characters of a text that the book's typeface cannot draw. */
final class Undrawn {
  private Undrawn() {}

  /** Each such character once, in Unicode's order. */
  static String in(String text) {
    return text.codePoints()
        .distinct()
        .sorted()
        .filter(point -> !Character.isWhitespace(point) && !Character.isSpaceChar(point))
        .filter(point -> Character.getType(point) != Character.FORMAT)
        .filter(point -> !Typeface.regular().draws(point))
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }
}
