package io.faultwright.analysis.space;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Where many sets of situations lie on one axis, and how the axis best tells them apart. */
final class Column {
  /** An axis with more cells is only cut in two stretches, never by scattered cells. */
  private static final int FEW_CELLS = 16;

  private static final int FEW_PATTERNS = 32;

  private final int axis;
  private final int size;
  private final BitSet[] cells;

  /**
   * @param cells for each set the cells of the axis in which it has situations
   */
  Column(int axis, int size, BitSet[] cells) {
    this.axis = axis;
    this.size = size;
    this.cells = cells;
  }

  /**
   * Two halves of the cells left.
   *
   * @param cost estimated work once each half is looked at alone; a set in both counts twice
   */
  record Split(int axis, BitSet one, BitSet other, double cost) {}

  /** Estimated work for so many sets. */
  static double cost(int sets) {
    return sets * Math.log(sets + 1.0);
  }

  /** The cheapest split of the cells left; empty where there is none. */
  Optional<Split> best(int[] sets, BitSet left) {
    return size <= FEW_CELLS ? byPattern(sets, left) : byCut(sets, left);
  }

  int[] meeting(int[] sets, BitSet wanted) {
    return Arrays.stream(sets).filter(set -> cells[set].intersects(wanted)).toArray();
  }

  /** Tries each pattern of cells that some set shows, against the rest. */
  private Optional<Split> byPattern(int[] sets, BitSet left) {
    Map<BitSet, Integer> patterns = new HashMap<>();
    for (int set : sets) {
      BitSet pattern = (BitSet) cells[set].clone();
      pattern.and(left);
      patterns.merge(pattern, 1, Integer::sum);
    }
    if (patterns.size() < 2 || patterns.size() > FEW_PATTERNS) {
      return patterns.size() < 2 ? Optional.empty() : byCut(sets, left);
    }
    Optional<Split> best = Optional.empty();
    for (BitSet pattern : patterns.keySet()) {
      best = cheaper(best, split(patterns, pattern, left));
    }
    return best;
  }

  private Optional<Split> split(Map<BitSet, Integer> patterns, BitSet one, BitSet left) {
    BitSet other = (BitSet) left.clone();
    other.andNot(one);
    if (other.isEmpty() || one.isEmpty()) {
      return Optional.empty();
    }
    int inOne = 0;
    int inOther = 0;
    for (Map.Entry<BitSet, Integer> entry : patterns.entrySet()) {
      inOne += entry.getKey().intersects(one) ? entry.getValue() : 0;
      inOther += entry.getKey().intersects(other) ? entry.getValue() : 0;
    }
    return Optional.of(new Split(axis, one, other, cost(inOne) + cost(inOther)));
  }

  /** Equal costs are settled by the cells, so that the same split is found every time. */
  private static Optional<Split> cheaper(Optional<Split> one, Optional<Split> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.isEmpty() ? other : one;
    }
    int order = Double.compare(other.get().cost(), one.get().cost());
    boolean earlier = other.get().one().toString().compareTo(one.get().one().toString()) < 0;
    return order < 0 || order == 0 && earlier ? other : one;
  }

  /** Tries every cut between two cells. */
  private Optional<Split> byCut(int[] sets, BitSet left) {
    int[] beginning = new int[size + 1];
    int[] ending = new int[size + 1];
    for (int set : sets) {
      int first = cells[set].nextSetBit(left.nextSetBit(0));
      int last = cells[set].previousSetBit(left.length() - 1);
      beginning[first]++;
      ending[last]++;
    }
    int at = -1;
    double best = Double.MAX_VALUE;
    int before = 0;
    int behind = sets.length;
    for (int cut = left.nextSetBit(0) + 1; cut < left.length(); cut++) {
      before += beginning[cut - 1];
      behind -= ending[cut - 1];
      double cost = cost(before) + cost(behind);
      if (cost < best) {
        best = cost;
        at = cut;
      }
    }
    return at < 0
        ? Optional.empty()
        : Optional.of(new Split(axis, part(left, 0, at), part(left, at, size), best));
  }

  private static BitSet part(BitSet cells, int from, int to) {
    BitSet part = (BitSet) cells.clone();
    part.clear(0, from);
    part.clear(to, Math.max(to, cells.length()));
    return part;
  }
}
