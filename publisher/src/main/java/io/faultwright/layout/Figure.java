package io.faultwright.layout;

import java.util.List;

/**
 * Outlines with their text, its upper left corner at 0, 0.
 *
 * @param width over all; even, so that the middle lies on half a point
 * @param height over all
 * @param shapes outlines, to be drawn first
 * @param texts lines of text
 */
record Figure(double width, double height, List<Shape> shapes, List<Text> texts) {
  Figure {
    shapes = List.copyOf(shapes);
    texts = List.copyOf(texts);
  }

  Figure shifted(double dx, double dy) {
    return new Figure(
        width,
        height,
        shapes.stream().map(shape -> shape.shifted(dx, dy)).toList(),
        texts.stream().map(text -> text.shifted(dx, dy)).toList());
  }
}
