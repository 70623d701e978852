package io.faultwright.sequence;

import java.util.List;

/** What to do in a set of situations; equal steps may be the same object. */
public sealed interface Step {
  /** The situations that are left. */
  int set();

  /** One result is left, or nothing tells more. */
  record Stop(int set) implements Step {}

  /**
   * A check is made.
   *
   * @param set the situations that are left
   * @param check position of the check
   * @param next what to do then, for each part that the answers leave, in their order
   * @param weighted what it costs from here on, times the likelihood of the set
   */
  record Ask(int set, int check, List<Step> next, double weighted) implements Step {
    public Ask {
      next = List.copyOf(next);
    }
  }
}
