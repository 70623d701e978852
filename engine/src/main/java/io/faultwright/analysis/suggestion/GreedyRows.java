package io.faultwright.analysis.suggestion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Builds row after row, each the best of many that are put together level by level in a random
 * order of the factors. The way of D. M. Cohen, S. R. Dalal, M. L. Fredman and G. C. Patton, IEEE
 * Transactions on Software Engineering 23(7), 1997.
 */
final class GreedyRows {
  private static final int CANDIDATES = 50;

  private final Levels levels;
  private final Refusals refusals;
  private final SplittableRandom random;

  /**
   * A row while it is made.
   *
   * @param order the factors in the order in which they got their levels
   */
  private record Draft(int[] row, int[] order) {}

  GreedyRows(Levels levels, Refusals refusals, SplittableRandom random) {
    this.levels = levels;
    this.refusals = refusals;
    this.random = random;
  }

  /** Rows for all missing pairs that can be. */
  List<int[]> rows(Cover cover) {
    List<int[]> rows = new ArrayList<>();
    for (Optional<Draft> next = best(cover); next.isPresent(); next = best(cover)) {
      Draft draft = next.get();
      if (settle(draft, cover)) {
        cover.add(draft.row());
        rows.add(draft.row());
      }
    }
    return rows;
  }

  private Optional<Draft> best(Cover cover) {
    Optional<Draft> best = Optional.empty();
    int most = 0;
    for (int i = 0; i < CANDIDATES; i++) {
      Optional<Draft> draft = start(cover);
      int gain = draft.map(made -> extend(made, 2, cover) + 1).orElse(0);
      if (gain > most) {
        best = draft;
        most = gain;
      }
    }
    return best;
  }

  /** A missing pair that may well be, with a level that misses most. */
  private Optional<Draft> start(Cover cover) {
    while (cover.missing() > 0) {
      int one = neediest(cover);
      int other = partner(cover, one);
      if (!refusals.barsPair(one, other)) {
        int[] row = levels.openRow();
        row[levels.factor(one)] = one;
        row[levels.factor(other)] = other;
        return Optional.of(new Draft(row, order(levels.factor(one), levels.factor(other))));
      }
      cover.giveUp(one, other);
    }
    return Optional.empty();
  }

  private int neediest(Cover cover) {
    Choice choice = new Choice(random);
    for (int level = 0; level < levels.count(); level++) {
      choice.offer(level, cover.missingOf(level));
    }
    return choice.best();
  }

  private int partner(Cover cover, int one) {
    Choice choice = new Choice(random);
    for (int level = 0; level < levels.count(); level++) {
      if (cover.misses(one, level)) {
        choice.offer(level, 0);
      }
    }
    return choice.best();
  }

  private int[] order(int first, int second) {
    int[] order = new int[levels.factors()];
    Arrays.setAll(order, factor -> factor);
    swap(order, 0, first);
    swap(order, 1, second == 0 ? first : second);
    for (int i = order.length - 1; i > 2; i--) {
      swap(order, i, 2 + random.nextInt(i - 1));
    }
    return order;
  }

  private static void swap(int[] order, int one, int other) {
    int kept = order[one];
    order[one] = order[other];
    order[other] = kept;
  }

  /** Gives levels to the factors from some point of the order on; how many pairs that brings. */
  private int extend(Draft draft, int from, Cover cover) {
    int gained = 0;
    for (int i = from; i < draft.order().length; i++) {
      Choice choice = choice(draft.row(), draft.order()[i], cover);
      draft.row()[draft.order()[i]] = choice.best();
      gained += Math.max(0, choice.worth());
    }
    return gained;
  }

  private Choice choice(int[] row, int factor, Cover cover) {
    Choice choice = new Choice(random);
    for (int level = levels.first(factor); level < levels.end(factor); level++) {
      int gain = cover.gain(level, row);
      if (choice.wants(gain) && !refusals.bars(level, row)) {
        choice.offer(level, gain);
      }
    }
    return choice;
  }

  /** Changes a row until it can be; false if its first pair cannot. */
  private boolean settle(Draft draft, Cover cover) {
    int[] order = draft.order();
    int good = refusals.together(draft.row(), order);
    while (good >= 2 && good < order.length) {
      for (int i = good; i < order.length; i++) {
        draft.row()[order[i]] = Levels.OPEN;
      }
      extend(draft, good, cover);
      good = refusals.together(draft.row(), order);
    }
    return good >= 2;
  }
}
