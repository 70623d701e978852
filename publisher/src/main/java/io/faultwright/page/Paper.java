package io.faultwright.page;

/** Sheet sizes of the printed book, in millimetres. */
public enum Paper {
  A4(210, 297),
  LETTER(215.9, 279.4);

  private static final double PIXELS_PER_MILLIMETRE = 96 / 25.4;

  private final double width;
  private final double height;

  Paper(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** The width that is left between margins, in CSS pixels. */
  int room(boolean landscape, double margins) {
    return pixels((landscape ? height : width) - margins);
  }

  /** The height that is left between margins, in CSS pixels. */
  int roomAbove(boolean landscape, double margins) {
    return pixels((landscape ? width : height) - margins);
  }

  private static int pixels(double millimetres) {
    return (int) Math.floor(millimetres * PIXELS_PER_MILLIMETRE);
  }

  /** The name that CSS page sizes use. */
  public String word() {
    return this == A4 ? "A4" : "letter";
  }
}
