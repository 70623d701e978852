package io.faultwright.layout;

import io.faultwright.flow.Node;
import java.util.List;

/**
 * A node where it is drawn. An outcome may be drawn in several places.
 *
 * @param node what is drawn
 * @param box its bounds
 * @param shapes its outlines
 * @param texts its lines of text
 */
public record PlacedNode(Node node, Box box, List<Shape> shapes, List<Text> texts) {
  static PlacedNode of(Node node, Figure figure, double x, double y) {
    Figure placed = figure.shifted(x, y);
    Box box = new Box(x, y, figure.width(), figure.height());
    return new PlacedNode(node, box, placed.shapes(), placed.texts());
  }

  PlacedNode shifted(double dx, double dy) {
    return new PlacedNode(
        node,
        box.shifted(dx, dy),
        shapes.stream().map(shape -> shape.shifted(dx, dy)).toList(),
        texts.stream().map(text -> text.shifted(dx, dy)).toList());
  }
}
