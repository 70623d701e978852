package io.faultwright.analysis.ambiguity;

import io.faultwright.ambiguity.Taking;
import java.util.List;

/**
 * Something that can be read next, as it looks in some situations.
 *
 * @param reading what it is read for: id of a reading, or of an equipment fact
 * @param taking all that has to be taken for it
 * @param parts the situations, not empty, that its outcomes leave; two at least
 * @param bits what it tells about what is aimed at
 */
record Ask(String reading, Taking taking, List<Integer> parts, double bits) {
  Ask {
    parts = List.copyOf(parts);
  }

  /** Bits for each weighted minute, as a whole number, so that rounding decides nothing. */
  long pace() {
    double minutes = taking.effort().weighted().doubleValue();
    return Math.round(bits * 1e9) == 0 ? 0 : Math.round(bits / minutes * 1e9);
  }
}
