package io.faultwright.field;

import java.util.Optional;

/**
 * What tells the disagreeing rows of a rule from the agreeing ones.
 *
 * @param kind whether something does, or why that cannot be said
 * @param separation what does; present only where it is so
 */
public record Contrast(Kind kind, Optional<Separation> separation) {
  /** How a comparison ended. */
  public enum Kind {
    /** A reading or equipment fact separates them. */
    SEPARATED,
    /** Nothing that was given separates them by more than chance would. */
    NOTHING_SEPARATES,
    /** With so few rows, chance could separate them. */
    TOO_FEW,
    /** No row agrees with the rule. */
    NOTHING_AGREES,
    /** No rule answered. */
    NO_RULE,
    /** There were more kinds of row than can be counted. */
    NOT_COUNTED
  }

  static Contrast none(Kind kind) {
    return new Contrast(kind, Optional.empty());
  }

  static Contrast of(Separation separation) {
    return new Contrast(Kind.SEPARATED, Optional.of(separation));
  }
}
