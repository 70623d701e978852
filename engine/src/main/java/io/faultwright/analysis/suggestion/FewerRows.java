package io.faultwright.analysis.suggestion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/** Takes one row away after the other, as long as the others can be changed to make up for it. */
final class FewerRows {
  /** How many pairs are looked at in all, at most: some half a second. */
  private static final long WORK = 100_000_000;

  /** The same for each wanted pair, so that small problems take less. */
  private static final long WORK_OF_PAIR = 50_000;

  private final Levels levels;
  private final Refusals refusals;
  private final Cover wanted;
  private final SplittableRandom random;

  FewerRows(Levels levels, Refusals refusals, Cover wanted, SplittableRandom random) {
    this.levels = levels;
    this.refusals = refusals;
    this.wanted = wanted;
    this.random = random;
  }

  /** Rows with the same wanted pairs, at most as many. */
  List<int[]> from(List<int[]> rows) {
    List<int[]> fewest = rows;
    int least = least();
    long left = Math.min(WORK, WORK_OF_PAIR * wanted.missing());
    boolean going = true;
    while (going && fewest.size() > least) {
      RowExchange exchange = new RowExchange(levels, refusals, wanted, random, oneLess(fewest));
      going = exchange.succeeds(left);
      left -= exchange.work();
      fewest = going ? exchange.rows() : fewest;
    }
    return fewest;
  }

  /** Copies of all rows but the one that is missed least. */
  private List<int[]> oneLess(List<int[]> rows) {
    Cover cover = new Cover(wanted);
    rows.forEach(cover::add);
    List<int[]> less = new ArrayList<>(rows);
    rows.stream().min(Comparator.comparingInt(row -> missed(row, cover))).ifPresent(less::remove);
    return less.stream().map(int[]::clone).toList();
  }

  private static int missed(int[] row, Cover cover) {
    int missed = 0;
    for (int level : row) {
      missed += cover.loss(level, row);
    }
    return missed;
  }

  /** Fewer rows cannot do: any two factors need as many as they have wanted pairs. */
  private int least() {
    int[][] pairs = new int[levels.factors()][levels.factors()];
    int least = 0;
    for (int i = 0; i < wanted.missing(); i++) {
      int one = levels.factor(wanted.one(i));
      int other = levels.factor(wanted.other(i));
      if (!refusals.barsPair(wanted.one(i), wanted.other(i))) {
        least = Math.max(least, ++pairs[one][other]);
      }
    }
    return least;
  }
}
