package io.faultwright.dmn;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/** Cells on a few axes as few blocks, each a set of stretches for every axis. */
final class Blocks {
  private Blocks() {}

  /** One block where the cells make one, else each cell alone. */
  static List<List<BitSet>> of(List<int[]> cells, int axes) {
    List<BitSet> all = block(cells, axes);
    long size = all.stream().mapToLong(BitSet::cardinality).reduce(1, (a, b) -> a * b);
    if (size == cells.size()) {
      return List.of(all);
    }
    List<List<BitSet>> single = new ArrayList<>();
    cells.forEach(cell -> single.add(block(List.of(cell), axes)));
    return single;
  }

  private static List<BitSet> block(List<int[]> cells, int axes) {
    return IntStream.range(0, axes)
        .mapToObj(
            axis -> {
              BitSet stretches = new BitSet();
              cells.forEach(cell -> stretches.set(cell[axis]));
              return stretches;
            })
        .toList();
  }
}
