package io.faultwright.analysis.suggestion;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Changes rows one level at a time until no wanted pair is missing. Each step takes a missing pair,
 * completes it in the row where that costs least, and then leaves the changed place alone for some
 * steps. The way of K. J. Nurmela, Discrete Applied Mathematics 138, 2004 (tabu search).
 */
final class RowExchange {
  /** For how many steps a changed place is left alone, at most; found by trying. */
  private static final int REST = 2;

  /** What a step costs besides the pairs it looks at. */
  private static final int STEP_WORK = 20;

  private final Levels levels;
  private final Refusals refusals;
  private final SplittableRandom random;
  private final List<int[]> rows;
  private final int[][] restsUntil;
  private final int[] order;
  private final Cover cover;
  private int step;
  private long work;

  /**
   * @param wanted what is to stand in the rows, before any of them was added
   * @param rows to be changed
   */
  RowExchange(
      Levels levels, Refusals refusals, Cover wanted, SplittableRandom random, List<int[]> rows) {
    this.levels = levels;
    this.refusals = refusals;
    this.random = random;
    this.rows = rows;
    this.restsUntil = new int[rows.size()][levels.factors()];
    this.order = new int[levels.factors()];
    Arrays.setAll(order, factor -> factor);
    this.cover = new Cover(wanted);
    rows.forEach(cover::add);
  }

  List<int[]> rows() {
    return rows;
  }

  /** How many pairs were looked at so far. */
  long work() {
    return work;
  }

  /** Whether all wanted pairs stand in the rows, and these can be, before the work is too much. */
  boolean succeeds(long most) {
    do {
      while (cover.missing() > 0) {
        if (work > most || refusals.spent()) {
          return false;
        }
        step();
      }
      rows.forEach(this::settle);
    } while (cover.missing() > 0);
    return true;
  }

  private void settle(int[] row) {
    for (int good = refusals.together(row, order);
        good < order.length;
        good = refusals.together(row, order)) {
      cover.set(row, order[good], Levels.OPEN);
    }
  }

  private void step() {
    step++;
    int missing = random.nextInt(cover.missing());
    int one = cover.one(missing);
    int other = cover.other(missing);
    if (refusals.barsPair(one, other)) {
      cover.giveUp(one, other);
    } else if (!complete(one, other)) {
      force(random.nextInt(rows.size()), one, other);
    }
  }

  /** Completes a pair in a row that has one of the two. */
  private boolean complete(int one, int other) {
    Choice choice = new Choice(random);
    for (int row = 0; row < rows.size(); row++) {
      if (rows.get(row)[levels.factor(one)] == one) {
        offer(choice, row, other);
      } else if (rows.get(row)[levels.factor(other)] == other) {
        offer(choice, row, one);
      }
    }
    work += STEP_WORK + rows.size();
    if (choice.best() < 0) {
      return false;
    }
    int row = choice.best();
    put(row, rows.get(row)[levels.factor(one)] == one ? other : one);
    return true;
  }

  private void offer(Choice choice, int at, int level) {
    int[] row = rows.get(at);
    int factor = levels.factor(level);
    if (restsUntil[at][factor] < step) {
      work += 2L * row.length;
      int worth = cover.gain(level, row) - cover.loss(row[factor], row);
      if (choice.wants(worth) && !refusals.bars(level, row)) {
        choice.offer(at, worth);
      }
    }
  }

  private void put(int row, int level) {
    int factor = levels.factor(level);
    cover.set(rows.get(row), factor, level);
    restsUntil[row][factor] = step + 1 + random.nextInt(REST);
    work += 2L * levels.factors();
  }

  /** Puts both levels of a pair into a row, and opens what does not go with them. */
  private void force(int at, int one, int other) {
    int[] row = rows.get(at);
    cover.set(row, levels.factor(one), Levels.OPEN);
    cover.set(row, levels.factor(other), Levels.OPEN);
    for (int level : new int[] {one, other}) {
      for (int[] bar = refusals.bar(level, row); bar.length > 0; bar = refusals.bar(level, row)) {
        open(row, bar, one, other);
      }
      put(at, level);
    }
  }

  private void open(int[] row, int[] bar, int one, int other) {
    int[] others = Arrays.stream(bar).filter(level -> level != one && level != other).toArray();
    int factor = levels.factor(others[random.nextInt(others.length)]);
    cover.set(row, factor, Levels.OPEN);
  }
}
