package io.faultwright.compile;

import io.faultwright.model.Truth;

/** How a situation is looked at while readings are missing. */
public enum Certainty {
  /** Only what holds whatever the missing readings are. */
  SURELY,
  /** All that is not ruled out. */
  POSSIBLY;

  /** Whether a test of this truth comes out as wanted. */
  boolean met(Truth truth, Truth wanted) {
    return this == SURELY ? truth == wanted : truth != wanted.not();
  }

  /** What is known of a statement at least, once its rule fires. */
  Truth verdict() {
    return this == SURELY ? Truth.TRUE : Truth.UNKNOWN;
  }
}
