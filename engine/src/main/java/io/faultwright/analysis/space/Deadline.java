package io.faultwright.analysis.space;

import java.time.Duration;

/**
 * When an analysis has to stop.
 *
 * @param nanos on the scale of {@link System#nanoTime}
 */
public record Deadline(long nanos) {
  /** As long as it takes. */
  public static final Deadline NEVER = new Deadline(System.nanoTime() + Long.MAX_VALUE / 2);

  /** So long from now. */
  public static Deadline in(Duration time) {
    return new Deadline(System.nanoTime() + time.toNanos());
  }

  /** Time left; zero or less once it has passed. */
  public long nanosLeft() {
    return nanos - System.nanoTime();
  }

  /**
   * Does nothing while there is time.
   *
   * @throws OutOfTime when there is none
   */
  void check() {
    if (nanosLeft() < 0) {
      throw new OutOfTime();
    }
  }
}
