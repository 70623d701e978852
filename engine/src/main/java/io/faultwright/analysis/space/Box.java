package io.faultwright.analysis.space;

import java.util.BitSet;
import java.util.List;

/**
 * A rectangular set of situations.
 *
 * @param cells for every axis of the space the accepted cells, at least one
 */
public record Box(List<BitSet> cells) {
  public Box {
    cells = cells.stream().map(set -> (BitSet) set.clone()).toList();
  }

  BitSet[] array() {
    return cells.toArray(BitSet[]::new);
  }
}
