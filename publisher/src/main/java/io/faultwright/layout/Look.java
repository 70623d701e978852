package io.faultwright.layout;

import java.util.Locale;

/**
 * How an outline is drawn. Shapes differ by line weight and by a tint that survives a photocopier;
 * nothing depends on colour.
 *
 * @param fill how light the inside is, from 0 for black to 255 for white; below 0 for not at all
 * @param weight of the line, in points
 */
public record Look(int fill, double weight) {
  public static final int INK = 0;
  public static final int PAPER = 255;

  /** Weight of a flow line between figures, in points. */
  public static final double LINE = 1;

  private static final int PALE = 241;
  private static final int GREY = 226;
  private static final int NONE = -1;

  public static Look of(Shape.Kind kind) {
    return switch (kind) {
      case START -> new Look(GREY, 1);
      case FAULT -> new Look(PAPER, 2.25);
      case REFERRAL -> new Look(PALE, 2.25);
      case ESCALATION -> new Look(GREY, 2.25);
      case PROCESS -> new Look(PALE, 0.75);
      case DECISION, CONNECTOR -> new Look(PAPER, 1.25);
      case LINK -> new Look(NONE, LINE);
      case ALERT -> new Look(INK, 0.75);
      case RULE -> new Look(NONE, 0.5);
      case FRAME -> new Look(NONE, 0.75);
    };
  }

  /** The inside as a colour of SVG. */
  public String colour() {
    if (fill < 0) {
      return "none";
    }
    String digits = String.format(Locale.ROOT, "%02x", fill);
    return fill == INK || fill == PAPER
        ? "#" + digits.substring(1).repeat(3)
        : "#" + digits.repeat(3);
  }
}
