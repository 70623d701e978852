package io.faultwright.page;

import org.w3c.dom.Element;

/** Reads a line of a drawing's text. */
final class DrawingText {
  /** Height of the typeface above its base line, in em (its own {@code hhea} table). */
  private static final double ASCENT = 0.935;

  private DrawingText() {}

  static ChartText of(Element line, double scale) {
    double size = number(line, "font-size");
    double x = number(line, "x");
    String anchor = line.getAttribute("text-anchor");
    double room = size * Math.max(1, line.getTextContent().length());
    double left =
        switch (anchor) {
          case "middle" -> x - room / 2;
          case "end" -> x - room;
          default -> x;
        };
    return new ChartText(
        line.getTextContent(),
        round(left * scale),
        round((number(line, "y") - ASCENT * size) * scale),
        round(room * scale),
        round(size * scale),
        align(anchor),
        line.getAttribute("font-weight").equals("700"),
        line.getParentNode() instanceof Element group && group.hasAttribute("opacity"));
  }

  private static String align(String anchor) {
    return switch (anchor) {
      case "middle" -> "center";
      case "end" -> "right";
      default -> "left";
    };
  }

  private static double number(Element line, String attribute) {
    return Double.parseDouble(line.getAttribute(attribute));
  }

  private static double round(double value) {
    return Math.round(value * 100) / 100.0;
  }
}
