package io.faultwright.sequence;

import java.util.BitSet;

/**
 * Something that can be asked.
 *
 * @param outlays what has to be paid for it, by position
 * @param after checks that have to be asked before it unless their answer is known, by position
 * @param late whether nothing that is not late may be asked after it
 */
public record Check(BitSet outlays, BitSet after, boolean late) {
  public Check {
    outlays = (BitSet) outlays.clone();
    after = (BitSet) after.clone();
  }

  /** A check that pays one outlay of its own and is bound to nothing. */
  public static Check of(int outlay) {
    BitSet outlays = new BitSet();
    outlays.set(outlay);
    return new Check(outlays, new BitSet(), false);
  }
}
