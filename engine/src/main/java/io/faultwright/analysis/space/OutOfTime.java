package io.faultwright.analysis.space;

/**
 * Thrown where an analysis could not end before its deadline, or within the memory there is; what
 * was found until then holds.
 */
public final class OutOfTime extends RuntimeException {
  private static final long serialVersionUID = 1L;

  OutOfTime() {
    super("the time allowed is over", null, false, false);
  }
}
