package io.faultwright.render.pdf;

import java.util.Locale;

/** Thrown where no font has a character. */
public final class Undrawable extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int codePoint;

  Undrawable(int codePoint) {
    super("no font draws " + codePoint, null, false, false);
    this.codePoint = codePoint;
  }

  /** The character with its code. */
  public String character() {
    return Character.toString(codePoint)
        + " (U+"
        + Integer.toHexString(0x10000 | codePoint)
            .substring(codePoint > 0xFFFF ? 0 : 1)
            .toUpperCase(Locale.ROOT)
        + ")";
  }
}
