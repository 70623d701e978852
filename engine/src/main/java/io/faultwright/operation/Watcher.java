package io.faultwright.operation;

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
}
