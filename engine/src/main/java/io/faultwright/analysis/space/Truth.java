package io.faultwright.analysis.space;

import io.faultwright.analysis.space.ConditionDiagrams.Aspect;
import io.faultwright.model.Condition;

/**
 * A condition as diagrams. Where it is neither true nor false it is unknown: a reading cannot be
 * taken, or a figure is missing. A test on a reading that the equipment does not have can never
 * come true, and neither can its negation.
 */
public final class Truth {
  private final ConditionDiagrams diagrams;
  private final Condition condition;

  Truth(ConditionDiagrams diagrams, Condition condition) {
    this.diagrams = diagrams;
    this.condition = condition;
  }

  /** Where it is surely true. */
  public int isTrue() {
    return diagrams.where(condition, Aspect.TRUE);
  }

  /** Where it is true or may be. */
  public int mayBeTrue() {
    return diagrams.where(condition, Aspect.MAYBE_TRUE);
  }
}
