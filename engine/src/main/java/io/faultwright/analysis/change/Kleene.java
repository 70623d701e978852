package io.faultwright.analysis.change;

import io.faultwright.model.Condition;
import java.util.List;

/** Conditions about conditions, in strong three-valued logic. */
final class Kleene {
  private Kleene() {}

  /**
   * The condition where something is known: its own value where {@code known} is true, unknown
   * where that is unknown, and never met, not even negated, where that is about a reading that the
   * machine lacks. {@code known} must not be false.
   */
  static Condition where(Condition known, Condition condition) {
    return new Condition.Any(
        List.of(new Condition.All(List.of(condition, known)), new Condition.Not(known)));
  }
}
