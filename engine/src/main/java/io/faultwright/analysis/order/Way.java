package io.faultwright.analysis.order;

import io.faultwright.sequence.Check;
import java.util.BitSet;

/**
 * What was done on the way to a set of situations.
 *
 * @param paid outlays, by position
 * @param asked checks, by position
 * @param late whether a late check was among them
 */
record Way(BitSet paid, BitSet asked, boolean late) {
  /** Nothing was done yet. */
  static final Way START = new Way(new BitSet(), new BitSet(), false);

  /**
   * After a further check.
   *
   * @param first whether it had to come first, so that it does not count as late
   */
  Way after(int position, Check check, boolean first) {
    BitSet more = (BitSet) paid.clone();
    more.or(check.outlays());
    BitSet further = (BitSet) asked.clone();
    further.set(position);
    return new Way(more, further, late || check.late() && !first);
  }
}
