package io.faultwright.analysis.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Divides things into the fewest groups in which none is a misfit of another, by trying; exact,
 * unless there are so many things at odds that trying has to end. From memory: Brélaz, "New methods
 * to color the vertices of a graph", Communications of the ACM 22(4), 1979.
 */
final class Grouping {
  /** Handbooks need some dozens. */
  private static final int MOST_TRIES = 500_000;

  private final BitSet[] misfits;
  private int tries;
  private final List<BitSet> groups = new ArrayList<>();
  private List<BitSet> best = new ArrayList<>();

  /**
   * @param misfits for each thing those that it must not stand beside
   */
  Grouping(BitSet[] misfits) {
    this.misfits = misfits.clone();
  }

  List<BitSet> fewest() {
    for (int i = 0; i < misfits.length; i++) {
      BitSet alone = new BitSet();
      alone.set(i);
      best.add(alone);
    }
    place(new BitSet());
    return List.copyOf(best);
  }

  private void place(BitSet placed) {
    if (groups.size() >= best.size() || tries++ >= MOST_TRIES) {
      return;
    }
    int next = hardest(placed);
    if (next < 0) {
      best = groups.stream().map(group -> (BitSet) group.clone()).toList();
      return;
    }
    placed.set(next);
    for (int i = 0; i < groups.size(); i++) {
      if (!groups.get(i).intersects(misfits[next])) {
        groups.get(i).set(next);
        place(placed);
        groups.get(i).clear(next);
      }
    }
    BitSet own = new BitSet();
    own.set(next);
    groups.add(own);
    place(placed);
    groups.remove(groups.size() - 1);
    placed.clear(next);
  }

  /**
   * The thing that fits the fewest groups, then the one with most misfits; -1 if all are placed.
   */
  private int hardest(BitSet placed) {
    int hardest = -1;
    long most = -1;
    for (int i = placed.nextClearBit(0); i < misfits.length; i = placed.nextClearBit(i + 1)) {
      BitSet others = misfits[i];
      long closed = groups.stream().filter(group -> group.intersects(others)).count();
      long rank = closed * (misfits.length + 1L) + others.cardinality();
      if (rank > most) {
        most = rank;
        hardest = i;
      }
    }
    return hardest;
  }
}
