package io.faultwright.layout;

/** A place on a page, in points from its upper left corner. */
public record Point(double x, double y) {
  Point shifted(double dx, double dy) {
    return new Point(x + dx, y + dy);
  }
}
