package io.faultwright.analysis.coverage;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Truth;

/**
 * A test in a rule, and where it decides: where the rule's conditions hold with the test one way
 * and fail with it the other way, whatever else is not known.
 *
 * @param test the test
 * @param ifTrue the rule's conditions with the test taken for true
 * @param ifFalse the same with the test taken for false
 */
record Deciding(Test test, Condition ifTrue, Condition ifFalse) {
  static Deciding of(Condition when, Test test) {
    return new Deciding(test, Tests.fixed(when, test, true), Tests.fixed(when, test, false));
  }

  /** The situations of a space in which the test decides, coming out as asked for. */
  int where(AimSpace space, boolean value) {
    int forward = both(space, space.whereTrue(ifTrue), space.whereFalse(ifFalse));
    int backward = both(space, space.whereFalse(ifTrue), space.whereTrue(ifFalse));
    int outcome = value ? space.whereTrue(test) : space.whereFalse(test);
    return both(
        space, space.workable(), both(space, outcome, space.diagrams().or(forward, backward)));
  }

  private static int both(AimSpace space, int one, int other) {
    return space.diagrams().and(one, other);
  }

  /** Whether a case shows the test decide, coming out as asked for. */
  boolean isShownBy(Sighting one, boolean value) {
    if (!one.worked() || one.observed().met(test) != Truth.of(value)) {
      return false;
    }
    Truth forward = one.observed().met(ifTrue);
    Truth backward = one.observed().met(ifFalse);
    return forward != Truth.UNKNOWN && backward == forward.not();
  }
}
