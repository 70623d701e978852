package io.faultwright.layout;

import io.faultwright.flow.Node;
import java.util.ArrayList;
import java.util.List;

/** Draws a check: cautions and steps in a process box, then the question in a decision. */
final class CheckFigure {
  private static final int MOST_STEP_LINES = 8;

  private final Typography type;
  private final Wrap plain;

  CheckFigure(Typography type) {
    this.type = type;
    this.plain = new Wrap(type.small(), false);
  }

  Figure of(Node.Check check) {
    Figure decision = new Decision(type).figure(check.question());
    if (check.warnings().isEmpty() && check.steps().isEmpty()) {
      return decision;
    }
    return stacked(process(check), decision);
  }

  private Figure stacked(Figure process, Figure decision) {
    double width = Math.max(process.width(), decision.width());
    double gap = Grid.half(type.size());
    List<Shape> shapes = new ArrayList<>();
    List<Text> texts = new ArrayList<>();
    Figure above = process.shifted((width - process.width()) / 2, 0);
    Figure below = decision.shifted((width - decision.width()) / 2, process.height() + gap);
    shapes.addAll(above.shapes());
    shapes.add(new Shape(Shape.Kind.LINK, new Box(width / 2, process.height(), 0, gap)));
    shapes.addAll(below.shapes());
    texts.addAll(above.texts());
    texts.addAll(below.texts());
    return new Figure(width, process.height() + gap + decision.height(), shapes, texts);
  }

  private Figure process(Node.Check check) {
    double width = type.stepsWidth();
    Paragraph column = new Paragraph(type.padding(), Grid.half(type.padding() * 0.7));
    CautionText cautions = new CautionText(type.small(), type.smallLeading(), type.say());
    check
        .warnings()
        .forEach(warning -> cautions.add(column, warning, warning.hazard(), textWidth()));
    steps(column, check.steps());
    double height = Grid.up(column.bottom() + type.padding() * 0.7);
    List<Shape> shapes = new ArrayList<>();
    shapes.add(new Shape(Shape.Kind.PROCESS, new Box(0, 0, width, height)));
    shapes.addAll(column.shapes());
    return new Figure(width, height, shapes, column.texts());
  }

  private void steps(Paragraph column, List<String> steps) {
    double indent = steps.size() > 1 ? Grid.half(type.small() * 0.9) : 0;
    for (int i = 0; i < steps.size(); i++) {
      List<String> lines = plain.lines(steps.get(i), textWidth() - indent, MOST_STEP_LINES);
      if (indent > 0 && !lines.isEmpty()) {
        column.mark(Integer.toString(i + 1), 0, type.small(), true, type.smallLeading());
      }
      column.add(lines, indent, type.small(), false, type.smallLeading());
    }
  }

  private double textWidth() {
    return type.stepsWidth() - 2 * type.padding();
  }
}
