package io.faultwright.logbook;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.Sequence;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Exact;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Times as steps of a controller. What comes between two looks is seen at the next, so a time is
 * the first step that is not before it.
 */
final class StepClock {
  private final long step;
  private long zero;
  private boolean begun;
  private long last = TimeText.NONE;

  /**
   * @throws Unreadable where the step is no whole number of nanoseconds
   */
  StepClock(Sequence sequence) {
    BigFraction nanos = sequence.step().multiply(BigFraction.of(TimeText.SECOND));
    if (!Exact.isWhole(nanos)) {
      String message = "a step of " + Decimals.show(sequence.step()) + " s is too fine for a log";
      throw new Unreadable(
          List.of(Problem.at(sequence.place(), message, "write `step: 0.1 s` or the like")));
    }
    this.step = nanos.longValue();
  }

  /** Times count from here on. */
  void begin(long nanos) {
    zero = nanos;
    begun = true;
  }

  boolean hasBegun() {
    return begun;
  }

  /** Whether a time is not before the last one; if so, it is the last one from now on. */
  boolean goesOn(long nanos) {
    boolean on = nanos >= last;
    last = on ? nanos : last;
    return on;
  }

  boolean isBeforeZero(long nanos) {
    return nanos < zero;
  }

  long step(long nanos) {
    return -Math.floorDiv(zero - nanos, step);
  }
}
