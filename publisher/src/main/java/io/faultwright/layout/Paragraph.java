package io.faultwright.layout;

import java.util.ArrayList;
import java.util.List;

/** A column that grows downwards, line by line. */
final class Paragraph {
  private final List<Shape> shapes = new ArrayList<>();
  private final List<Text> texts = new ArrayList<>();
  private final double x;
  private double y;

  /** An empty column. */
  Paragraph(double x, double y) {
    this.x = x;
    this.y = y;
  }

  /** Adds lines that start at the left edge of the column, moved in by an indent. */
  void add(List<String> lines, double indent, double size, boolean bold, double leading) {
    for (String line : lines) {
      place(line, x + indent, size, bold, leading, Text.Anchor.START);
    }
  }

  /** Adds lines in the middle of a place. */
  void addCentred(List<String> lines, double middle, double size, boolean bold, double leading) {
    for (String line : lines) {
      place(line, middle, size, bold, leading, Text.Anchor.MIDDLE);
    }
  }

  private void place(
      String line, double at, double size, boolean bold, double leading, Text.Anchor anchor) {
    texts.add(new Text(line, at, y + Typography.ascent(leading), size, bold, anchor));
    y += leading;
  }

  /** Adds text at the left edge without moving on. */
  void mark(String text, double indent, double size, boolean bold, double leading) {
    texts.add(
        new Text(text, x + indent, y + Typography.ascent(leading), size, bold, Text.Anchor.START));
  }

  /** Adds an outline at the current height without moving on. */
  void outline(Shape.Kind kind, double indent, double drop, double width, double height) {
    shapes.add(new Shape(kind, new Box(x + indent, y + drop, width, height)));
  }

  void skip(double height) {
    y += height;
  }

  double bottom() {
    return y;
  }

  List<Shape> shapes() {
    return shapes;
  }

  List<Text> texts() {
    return texts;
  }
}
