package io.faultwright.layout;

import io.faultwright.flow.Node;
import java.util.List;

/**
 * The room a node takes: its figure, and above it the last stretch of the line that enters it with
 * the answer beside. As every node of a tree is entered once, an answer can never meet another.
 *
 * @param node what stands there
 * @param figure how it is drawn
 * @param answer lines of the answer
 * @param headroom height of the stretch above the figure
 * @param type sizes of the chart
 */
record Slot(Node node, Figure figure, List<String> answer, double headroom, Typography type) {
  private static final int MOST_ANSWER_LINES = 8;
  private static final double BESIDE = 4;

  /** A slot as high as its own answer. */
  static Slot of(Node node, String answer, Figures figures, Typography type) {
    Figure figure = figures.of(node);
    double width = Math.max(figure.width() / 2 - BESIDE - 2, type.answerWidth());
    List<String> lines = wrap(type).lines(answer, width, MOST_ANSWER_LINES);
    double headroom = lines.isEmpty() ? 0 : lines.size() * type.smallLeading() + type.size();
    return new Slot(node, figure, lines, Grid.up(headroom), type);
  }

  Slot withHeadroom(double height) {
    return new Slot(node, figure, answer, height, type);
  }

  double height() {
    return headroom + figure.height();
  }

  /** The node, for a slot whose upper edge has its middle at a place. */
  PlacedNode placed(double x, double y) {
    return PlacedNode.of(node, figure, x - figure.width() / 2, y + headroom);
  }

  /** The answer, for a slot whose upper edge has its middle at a place. */
  List<Text> label(double x, double y) {
    Paragraph column = new Paragraph(x + BESIDE, y);
    column.add(answer, 0, type.small(), false, type.smallLeading());
    return List.copyOf(column.texts());
  }

  /** The room of the figure, and that of the line above it with its answer. */
  List<Box> boxes(double x, double y) {
    Box below = new Box(x - figure.width() / 2, y + headroom, figure.width(), figure.height());
    double text = Grid.up(wrap(type).widest(answer));
    return headroom == 0
        ? List.of(below)
        : List.of(new Box(x - BESIDE, y, 2 * BESIDE + text, headroom), below);
  }

  private static Wrap wrap(Typography type) {
    return new Wrap(type.small(), false);
  }
}
