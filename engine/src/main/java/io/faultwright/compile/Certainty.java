package io.faultwright.compile;

/** How a situation is looked at while readings are missing. */
public enum Certainty {
  /** Only what holds whatever the missing readings are. */
  SURELY,
  /** All that is not ruled out. */
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

  /** What is known of a statement at least, once its rule fires. */
  Truth verdict() {
    return this == SURELY ? Truth.TRUE : Truth.UNKNOWN;
  }
}
