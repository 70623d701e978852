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
  private final long[] patterns;

  /**
   * @param cells for each set the cells of the axis in which it has situations
   */
  Column(int axis, int size, BitSet[] cells) {
    this.axis = axis;
    this.size = size;
    this.cells = cells;
    this.patterns = size <= FEW_CELLS ? patterns(cells) : new long[0];
  }

  private static long[] patterns(BitSet[] cells) {
    return Arrays.stream(cells).mapToLong(Column::pattern).toArray();
  }

  /** A few cells as the bits of a number. */
  private static long pattern(BitSet cells) {
    long[] words = cells.toLongArray();
    return words.length == 0 ? 0 : words[0];
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
    long among = pattern(left);
    Map<Long, Integer> counts = new HashMap<>();
    for (int set : sets) {
      counts.merge(patterns[set] & among, 1, Integer::sum);
    }
    if (counts.size() < 2 || counts.size() > FEW_PATTERNS) {
      return counts.size() < 2 ? Optional.empty() : byCut(sets, left);
    }
    Optional<Split> best = Optional.empty();
    for (long pattern : counts.keySet()) {
      best = cheaper(best, split(counts, pattern, among));
    }
    return best;
  }

  private Optional<Split> split(Map<Long, Integer> counts, long one, long left) {
    long other = left & ~one;
    if (other == 0 || one == 0) {
      return Optional.empty();
    }
    int inOne = 0;
    int inOther = 0;
    for (Map.Entry<Long, Integer> entry : counts.entrySet()) {
      inOne += (entry.getKey() & one) != 0 ? entry.getValue() : 0;
      inOther += (entry.getKey() & other) != 0 ? entry.getValue() : 0;
    }
    double cost = cost(inOne) + cost(inOther);
    return Optional.of(new Split(axis, cells(one), cells(other), cost));
  }

  private static BitSet cells(long pattern) {
    return BitSet.valueOf(new long[] {pattern});
  }

  private static Optional<Split> cheaper(Optional<Split> one, Optional<Split> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.isEmpty() ? other : one;
    }
    int order = Double.compare(other.get().cost(), one.get().cost());
    return order < 0 || order == 0 && isEarlier(other.get(), one.get()) ? other : one;
  }

  /** Equal costs are settled by the cells, so that the same split is found every time. */
  private static boolean isEarlier(Split one, Split other) {
    return one.one().toString().compareTo(other.one().toString()) < 0;
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
