package io.faultwright.sequence;

import java.util.BitSet;

/**
 * Sets of situations and what checks make of them. A set is known by a number; equal sets have the
 * same number. Every answer is a question back to the same thing: asked twice, nothing changes.
 */
public interface Situations {
  /** The set to begin with. */
  int all();

  /**
   * How likely each result is that is met in a set, relative to those of other sets; one entry for
   * each result, none of them negative.
   */
  double[] results(int set);

  /** What the answers to a check leave of a set: parts, not empty; one where it tells nothing. */
  int[] parts(int set, int check);

  /**
   * How likely it is, relative to {@link #results}, to meet a situation of a set that a check alone
   * tells apart from some possible situation with another result, all other answers being equal. No
   * order can do without the check there.
   */
  double needed(int set, int check);

  /** Checks of which one has to come next; none where any may. */
  BitSet first(int set);
}
