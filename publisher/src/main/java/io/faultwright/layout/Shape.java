package io.faultwright.layout;

/**
 * An outline of the drawing.
 *
 * @param kind which symbol (ISO 5807, and the safety alert symbol of ANSI Z535)
 * @param box its bounds
 */
public record Shape(Kind kind, Box box) {
  /** Symbols, by meaning. */
  public enum Kind {
    /** Terminator at which the chart starts. */
    START,
    /** Terminator: a fault. */
    FAULT,
    /** Terminator: another symptom. */
    REFERRAL,
    /** Terminator: ask someone. */
    ESCALATION,
    /** Process: what to do before the question is answered. */
    PROCESS,
    /** Decision. */
    DECISION,
    /** Connector to or from another part of the chart. */
    CONNECTOR,
    /** A flow line inside a figure; the box has no width or no height. */
    LINK,
    /** Safety alert symbol: a triangle with an exclamation mark. */
    ALERT,
    /** A thin rule of the page's frame; the box has no width or no height. */
    RULE,
    /** Frame of a page. */
    FRAME
  }

  Shape shifted(double dx, double dy) {
    return new Shape(kind, box.shifted(dx, dy));
  }
}
