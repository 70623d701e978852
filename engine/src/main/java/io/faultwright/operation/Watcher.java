package io.faultwright.operation;

import java.util.List;

/** Is told what a machine does, as it does it. */
public interface Watcher {
  /**
   * A phase begins.
   *
   * @param step at which it begins
   * @param phase number of the phase
   * @param reason why
   */
  void entered(long step, int phase, Reason reason);

  /**
   * Several lines can be taken at once; one of them is taken next.
   *
   * @param step at which they can
   * @param lines in the written order; changes later on
   */
  default void several(long step, List<Line> lines) {}
}
