package io.faultwright.layout;

import io.faultwright.font.Typeface;

/**
 * One line of text.
 *
 * @param content what is printed
 * @param x where it is anchored
 * @param baseline its baseline
 * @param size font size
 * @param bold whether in the bold weight
 * @param anchor which part of the line stands at {@code x}
 */
public record Text(
    String content, double x, double baseline, double size, boolean bold, Anchor anchor) {
  /** Part of a line that stands at its x. */
  public enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** Width by the metrics of the font. */
  public double width() {
    return (bold ? Typeface.bold() : Typeface.regular()).width(content, size);
  }

  /** The left end of the line. */
  public double left() {
    return switch (anchor) {
      case START -> x;
      case MIDDLE -> x - width() / 2;
      case END -> x - width();
    };
  }

  /** The room the line takes, from the top of its capitals to the foot of its descenders. */
  public Box box() {
    return new Box(left(), baseline - 0.75 * size, width(), 0.95 * size);
  }

  Text shifted(double dx, double dy) {
    return new Text(content, x + dx, baseline + dy, size, bold, anchor);
  }
}
