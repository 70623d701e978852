package io.faultwright.pipeline;

import io.faultwright.analysis.space.Deadline;
import java.time.Duration;
import java.util.Optional;

/** When long work has to end: after some time, or as soon as somebody asks for it. */
public final class Stop {
  private final long end;
  private volatile boolean asked;

  /**
   * @param time after which it ends by itself; absent for never
   */
  public Stop(Optional<Duration> time) {
    this.end = time.map(length -> Deadline.in(length).nanos()).orElse(Long.MAX_VALUE / 2);
  }

  /** Ends the work soon; what was done until then is kept. */
  public void now() {
    asked = true;
  }

  /** The same for analyses. */
  Deadline deadline() {
    return new Deadline(end, () -> asked ? Long.MAX_VALUE / 2 + 1 : System.nanoTime());
  }
}
