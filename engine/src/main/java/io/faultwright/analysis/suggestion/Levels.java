package io.faultwright.analysis.suggestion;

import java.util.Arrays;

/**
 * The levels of all factors under one run of numbers. A row has, for each factor, such a number, or
 * -1 where it is open.
 */
final class Levels {
  static final int OPEN = -1;

  private final int[] first;
  private final int[] factorOf;

  Levels(int[] counts) {
    this.first = new int[counts.length + 1];
    for (int factor = 0; factor < counts.length; factor++) {
      first[factor + 1] = first[factor] + counts[factor];
    }
    this.factorOf = new int[first[counts.length]];
    for (int factor = 0; factor < counts.length; factor++) {
      Arrays.fill(factorOf, first[factor], first[factor + 1], factor);
    }
  }

  int factors() {
    return first.length - 1;
  }

  int count() {
    return factorOf.length;
  }

  int factor(int level) {
    return factorOf[level];
  }

  int first(int factor) {
    return first[factor];
  }

  /** The number after those of the factor. */
  int end(int factor) {
    return first[factor + 1];
  }

  int[] openRow() {
    int[] row = new int[factors()];
    Arrays.fill(row, OPEN);
    return row;
  }

  /** A row with each level counted from 0 within its factor. */
  int[] local(int[] row) {
    int[] local = row.clone();
    for (int factor = 0; factor < row.length; factor++) {
      local[factor] = row[factor] == OPEN ? OPEN : row[factor] - first[factor];
    }
    return local;
  }
}
