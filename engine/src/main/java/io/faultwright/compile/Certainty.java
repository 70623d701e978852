package io.faultwright.compile;

/**
 * How surely a condition holds for a rule of Drools to fire; each statement has one rule of each.
 */
enum Certainty {
  SURELY,
  POSSIBLY;

  boolean met(Truth truth) {
    return this == SURELY ? truth == Truth.TRUE : truth != Truth.FALSE;
  }

  /**
   * A negation holds surely where its part does not hold even possibly, and the other way round.
   */
  Certainty below() {
    return this == SURELY ? POSSIBLY : SURELY;
  }

  /** What is known of a statement at least, once its rule of this certainty fires. */
  Truth verdict() {
    return this == SURELY ? Truth.TRUE : Truth.UNKNOWN;
  }
}
