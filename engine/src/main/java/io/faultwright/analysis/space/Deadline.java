package io.faultwright.analysis.space;

import java.time.Duration;
import java.util.function.LongSupplier;

/**
 * When an analysis has to stop.
 *
 * @param nanos on the scale of the clock
 * @param clock nanoseconds, on any scale
 */
public record Deadline(long nanos, LongSupplier clock) {
  /** As long as it takes. */
  public static final Deadline NEVER = new Deadline(Long.MAX_VALUE / 2, () -> 0);

  /** So long from now. */
  public static Deadline in(Duration time) {
    return new Deadline(System.nanoTime() + time.toNanos(), System::nanoTime);
  }

  /** Time left; zero or less once it has passed. */
  public long nanosLeft() {
    return nanos - clock.getAsLong();
  }

  /**
   * Does nothing while there is time.
   *
   * @throws OutOfTime when there is none
   */
  public void check() {
    if (nanosLeft() <= 0) {
      throw new OutOfTime();
    }
  }
}
