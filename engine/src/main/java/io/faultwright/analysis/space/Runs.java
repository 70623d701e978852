package io.faultwright.analysis.space;

import java.util.Arrays;
import java.util.BitSet;

/** The children of a node under construction; neighbouring cells with one child are one run. */
final class Runs {
  private int[] pairs;
  private int used;

  Runs(int expected) {
    this.pairs = new int[2 * expected];
  }

  /** One run per cell, joined where neighbours are equal. */
  static Runs of(int[] children) {
    Runs runs = new Runs(children.length);
    for (int cell = 0; cell < children.length; cell++) {
      runs.add(children[cell], cell + 1);
    }
    return runs;
  }

  /** One child in the given cells, another in the rest. */
  static Runs of(BitSet cells, int size, int inside, int outside) {
    Runs runs = new Runs(4);
    int from = 0;
    while (from < size) {
      boolean in = cells.get(from);
      int next = in ? cells.nextClearBit(from) : cells.nextSetBit(from);
      int end = next < 0 ? size : Math.min(next, size);
      runs.add(in ? inside : outside, end);
      from = end;
    }
    return runs;
  }

  /** Appends a run up to, not including, a cell. */
  void add(int child, int end) {
    if (used > 0 && pairs[used - 2] == child) {
      pairs[used - 1] = end;
      return;
    }
    if (used == pairs.length) {
      pairs = Arrays.copyOf(pairs, Math.max(8, used * 2));
    }
    pairs[used++] = child;
    pairs[used++] = end;
  }

  /** Child and end of every run, in turn; only the first {@link #length} numbers count. */
  int[] pairs() {
    return pairs;
  }

  int length() {
    return used;
  }

  /** Whether all cells have one child. */
  boolean single() {
    return used == 2;
  }
}
