package io.faultwright.render.svg;

import io.faultwright.layout.Box;
import io.faultwright.layout.Look;
import io.faultwright.layout.Shape;
import io.faultwright.xml.Xml;
import java.util.Locale;
import java.util.Map;

/** Draws one outline. */
final class Outline {
  /** Class names that differ from the kind. */
  private static final Map<Shape.Kind, String> NAMES = Map.of(Shape.Kind.LINK, "line");

  static final String INK = "#000";

  private final Xml xml;
  private String name = "";

  Outline(Xml xml) {
    this.xml = xml;
  }

  void draw(Shape shape) {
    Box box = shape.box();
    Look look = Look.of(shape.kind());
    name = NAMES.getOrDefault(shape.kind(), shape.kind().name().toLowerCase(Locale.ROOT));
    switch (shape.kind()) {
      case START, FAULT, REFERRAL, ESCALATION -> rectangle(box, look, box.height() / 2);
      case PROCESS, FRAME -> rectangle(box, look, 0);
      case DECISION -> diamond(box, look);
      case CONNECTOR -> circle(box, look);
      case LINK, RULE -> line(box, look);
      case ALERT -> alert(box, look);
    }
  }

  private void rectangle(Box box, Look look, double radius) {
    xml.empty(
        "rect",
        "class",
        name,
        "x",
        box.x(),
        "y",
        box.y(),
        "width",
        box.width(),
        "height",
        box.height(),
        "rx",
        radius,
        "ry",
        radius,
        "fill",
        look.colour(),
        "stroke",
        INK,
        "stroke-width",
        look.weight());
  }

  private void diamond(Box box, Look look) {
    String points =
        pair(box.centreX(), box.y())
            + " "
            + pair(box.right(), box.centreY())
            + " "
            + pair(box.centreX(), box.bottom())
            + " "
            + pair(box.x(), box.centreY());
    polygon(points, look);
  }

  private void polygon(String points, Look look) {
    xml.empty(
        "polygon",
        "class",
        name,
        "points",
        points,
        "fill",
        look.colour(),
        "stroke",
        INK,
        "stroke-width",
        look.weight(),
        "stroke-linejoin",
        "round");
  }

  private void circle(Box box, Look look) {
    xml.empty(
        "circle",
        "class",
        name,
        "cx",
        box.centreX(),
        "cy",
        box.centreY(),
        "r",
        box.width() / 2,
        "fill",
        look.colour(),
        "stroke",
        INK,
        "stroke-width",
        look.weight());
  }

  private void line(Box box, Look look) {
    xml.empty(
        "line",
        "class",
        name,
        "x1",
        box.x(),
        "y1",
        box.y(),
        "x2",
        box.right(),
        "y2",
        box.bottom(),
        "stroke",
        INK,
        "stroke-width",
        look.weight());
  }

  /** A black triangle with a white exclamation mark. */
  private void alert(Box box, Look look) {
    polygon(
        pair(box.centreX(), box.y())
            + " "
            + pair(box.right(), box.bottom())
            + " "
            + pair(box.x(), box.bottom()),
        look);
    double width = box.width() / 8;
    xml.empty(
        "rect",
        "x",
        box.centreX() - width / 2,
        "y",
        box.y() + box.height() * 0.34,
        "width",
        width,
        "height",
        box.height() * 0.34,
        "fill",
        "#fff");
    xml.empty(
        "circle",
        "cx",
        box.centreX(),
        "cy",
        box.y() + box.height() * 0.82,
        "r",
        width * 0.65,
        "fill",
        "#fff");
  }

  static String pair(double x, double y) {
    return Xml.number(x) + "," + Xml.number(y);
  }
}
