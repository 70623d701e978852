package io.faultwright.render.pdf;

import io.faultwright.font.Typeface;
import io.faultwright.layout.Box;
import io.faultwright.layout.Look;
import io.faultwright.layout.Point;
import io.faultwright.layout.QrSymbol;
import io.faultwright.layout.Shape;
import io.faultwright.layout.Text;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Draws on a page of a PDF, whose y runs upwards. */
final class Pen {
  /** Where the handles of a quarter of a circle lie, as a share of its radius. */
  private static final float HANDLE = 0.5523f;

  private static final double ARROW_LENGTH = 6;
  private static final double ARROW_HALF_WIDTH = 2.5;
  private static final int ROUND = 1;

  private final PDPageContentStream stream;
  private final double height;
  private final PDFont regular;
  private final PDFont bold;

  Pen(PDPageContentStream stream, double height, PDFont regular, PDFont bold) throws IOException {
    this.stream = stream;
    this.height = height;
    this.regular = regular;
    this.bold = bold;
    stream.setLineJoinStyle(ROUND);
  }

  void shapes(List<Shape> shapes) throws IOException {
    for (Shape shape : shapes) {
      shape(shape);
    }
  }

  private void shape(Shape shape) throws IOException {
    Box box = shape.box();
    switch (shape.kind()) {
      case START, FAULT, REFERRAL, ESCALATION -> rounded(box, box.height() / 2);
      case PROCESS, FRAME -> rectangle(box);
      case DECISION ->
          polygon(
              new Point(box.centreX(), box.y()),
              new Point(box.right(), box.centreY()),
              new Point(box.centreX(), box.bottom()),
              new Point(box.x(), box.centreY()));
      case CONNECTOR -> rounded(box, box.width() / 2);
      case LINK, RULE ->
          polyline(List.of(new Point(box.x(), box.y()), new Point(box.right(), box.bottom())));
      case ALERT ->
          polygon(
              new Point(box.centreX(), box.y()),
              new Point(box.right(), box.bottom()),
              new Point(box.x(), box.bottom()));
    }
    paint(Look.of(shape.kind()));
    if (shape.kind() == Shape.Kind.ALERT) {
      exclamation(box);
    }
  }

  private void paint(Look look) throws IOException {
    stream.setStrokingColor(Look.INK / 255f);
    stream.setLineWidth((float) look.weight());
    if (look.fill() < 0) {
      stream.stroke();
    } else {
      stream.setNonStrokingColor(look.fill() / 255f);
      stream.fillAndStroke();
    }
  }

  /** The white mark in the black triangle. */
  private void exclamation(Box box) throws IOException {
    double width = box.width() / 8;
    stream.setNonStrokingColor(Look.PAPER / 255f);
    rectangle(
        new Box(
            box.centreX() - width / 2, box.y() + box.height() * 0.34, width, box.height() * 0.34));
    double radius = width * 0.65;
    rounded(
        new Box(
            box.centreX() - radius, box.y() + box.height() * 0.82 - radius, 2 * radius, 2 * radius),
        radius);
    stream.fill();
  }

  /** A flow line with its arrowhead. */
  void line(List<Point> line) throws IOException {
    polyline(line);
    stream.setStrokingColor(Look.INK / 255f);
    stream.setLineWidth((float) Look.LINE);
    stream.stroke();
    Point tip = line.get(line.size() - 1);
    double base = tip.y() - ARROW_LENGTH;
    polygon(
        tip,
        new Point(tip.x() - ARROW_HALF_WIDTH, base),
        new Point(tip.x() + ARROW_HALF_WIDTH, base));
    stream.setNonStrokingColor(Look.INK / 255f);
    stream.fill();
  }

  void code(QrSymbol code) throws IOException {
    stream.setNonStrokingColor(Look.INK / 255f);
    for (Box dark : code.dark()) {
      rectangle(dark);
    }
    stream.fill();
  }

  void texts(List<Text> texts) throws IOException {
    for (Text text : texts) {
      stream.setNonStrokingColor(Look.INK / 255f);
      stream.beginText();
      stream.setFont(text.bold() ? bold : regular, (float) text.size());
      stream.newLineAtOffset((float) text.left(), (float) (height - text.baseline()));
      stream.showText(drawable(text.content()));
      stream.endText();
    }
  }

  /** The text with a question mark for what the typeface lacks. */
  private static String drawable(String text) {
    StringBuilder drawable = new StringBuilder();
    text.codePoints()
        .filter(point -> Character.getType(point) != Character.FORMAT)
        .map(point -> Typeface.regular().draws(point) ? point : '?')
        .forEach(drawable::appendCodePoint);
    return drawable.toString();
  }

  private void rectangle(Box box) throws IOException {
    stream.addRect(
        (float) box.x(),
        (float) (height - box.bottom()),
        (float) box.width(),
        (float) box.height());
  }

  private void polygon(Point... points) throws IOException {
    polyline(List.of(points));
    stream.closePath();
  }

  private void polyline(List<Point> points) throws IOException {
    stream.moveTo(x(points.get(0)), y(points.get(0)));
    for (Point point : points.subList(1, points.size())) {
      stream.lineTo(x(point), y(point));
    }
  }

  private void rounded(Box box, double radius) throws IOException {
    float left = (float) box.x();
    float right = (float) box.right();
    float top = (float) (height - box.y());
    float bottom = (float) (height - box.bottom());
    float r = (float) radius;
    float rest = r * (1 - HANDLE);
    stream.moveTo(left + r, top);
    stream.lineTo(right - r, top);
    stream.curveTo(right - rest, top, right, top - rest, right, top - r);
    stream.lineTo(right, bottom + r);
    stream.curveTo(right, bottom + rest, right - rest, bottom, right - r, bottom);
    stream.lineTo(left + r, bottom);
    stream.curveTo(left + rest, bottom, left, bottom + rest, left, bottom + r);
    stream.lineTo(left, top - r);
    stream.curveTo(left, top - rest, left + rest, top, left + r, top);
    stream.closePath();
  }

  private static float x(Point point) {
    return (float) point.x();
  }

  private float y(Point point) {
    return (float) (height - point.y());
  }
}
