package io.faultwright.layout;

/**
 * An upright rectangle, in points.
 *
 * @param x left edge
 * @param y upper edge
 * @param width to the right
 * @param height downwards
 */
public record Box(double x, double y, double width, double height) {
  public double right() {
    return x + width;
  }

  public double bottom() {
    return y + height;
  }

  public double centreX() {
    return x + width / 2;
  }

  public double centreY() {
    return y + height / 2;
  }

  /** Whether the two share more than an edge. */
  public boolean overlaps(Box other) {
    return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
  }

  Box shifted(double dx, double dy) {
    return new Box(x + dx, y + dy, width, height);
  }
}
