package io.faultwright.render.svg;

import io.faultwright.layout.Shape;

/**
 * How an outline is drawn. Shapes differ by line weight and by a tint that survives a photocopier;
 * nothing depends on colour.
 *
 * @param name class name
 * @param fill of the inside
 * @param weight of the line, in points
 */
record Look(String name, String fill, double weight) {
  private static final String PAPER = "#fff";
  private static final String PALE = "#f1f1f1";
  private static final String GREY = "#e2e2e2";

  static final String INK = "#000";

  static Look of(Shape.Kind kind) {
    return switch (kind) {
      case START -> new Look("start", GREY, 1);
      case FAULT -> new Look("fault", PAPER, 2.25);
      case REFERRAL -> new Look("referral", PALE, 2.25);
      case ESCALATION -> new Look("escalation", GREY, 2.25);
      case PROCESS -> new Look("process", PALE, 0.75);
      case DECISION -> new Look("decision", PAPER, 1.25);
      case CONNECTOR -> new Look("connector", PAPER, 1.25);
      case LINK -> new Look("line", "none", 1);
      case ALERT -> new Look("alert", INK, 0.75);
      case RULE -> new Look("rule", "none", 0.5);
      case FRAME -> new Look("frame", "none", 0.75);
    };
  }
}
