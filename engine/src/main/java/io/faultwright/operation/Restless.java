package io.faultwright.operation;

/** A machine that goes from phase to phase within one step, without end. */
public final class Restless extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final long step;

  Restless(long step) {
    super("at step " + step + " phase follows phase without end");
    this.step = step;
  }

  /** The step at which it does not come to rest. */
  public long step() {
    return step;
  }
}
