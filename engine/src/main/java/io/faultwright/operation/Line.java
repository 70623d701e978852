package io.faultwright.operation;

import io.faultwright.model.Sequence.Transition;
import java.util.Arrays;

/**
 * What leads from a phase to the next, with every name replaced by its number and every time by
 * steps. Arrays are never changed.
 *
 * @param source as written
 * @param number among the lines of its phase, in the written order
 * @param input of the event it waits for; {@link #NONE} where it waits for none
 * @param state into which that input comes; {@link #NONE} for a push
 * @param inputs that have to be in a state
 * @param states in which these have to be
 * @param clock that has to have run: 0 for the phase, then the timers
 * @param after steps that the clock has to have run; 0 where it need not
 * @param go the next phase
 * @param count counters that go up by one
 * @param reset counters that begin again
 * @param silencedBy numbers of the lines of the phase that go ahead of this one
 */
public record Line(
    Transition source,
    int number,
    int input,
    int state,
    int[] inputs,
    int[] states,
    int clock,
    long after,
    int go,
    int[] count,
    int[] reset,
    int[] silencedBy) {
  /** No input, or no state. */
  public static final int NONE = -1;

  /** Whether it waits for an event. */
  public boolean waits() {
    return input != NONE;
  }

  /** Whether the inputs are in the states it needs. */
  public boolean statesHold(int[] now) {
    for (int i = 0; i < inputs.length; i++) {
      if (now[inputs[i]] != states[i]) {
        return false;
      }
    }
    return true;
  }

  /** Whether it does the same as another. */
  public boolean sameAs(Line other) {
    return go == other.go && Arrays.equals(count, other.count) && Arrays.equals(reset, other.reset);
  }
}
