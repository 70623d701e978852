package io.faultwright.layout;

/** Sizes of paper, upright, in whole points. */
public enum Paper {
  A4(595, 842),
  LETTER(612, 792);

  private final int width;
  private final int height;

  Paper(int width, int height) {
    this.width = width;
    this.height = height;
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }
}
