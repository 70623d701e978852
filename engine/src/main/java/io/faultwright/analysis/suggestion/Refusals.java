package io.faultwright.analysis.suggestion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/**
 * The combinations of levels that cannot be, as far as known. Asking is dear: of a refused row the
 * smallest part that is refused by itself is found and remembered, and of an allowed row all parts.
 */
final class Refusals {
  /** At 0.1 to 1 ms a question, 0.4 to 4 s. */
  private static final int MANY = 4_000;

  private static final int[] NONE = {};

  private final Levels levels;
  private final Predicate<int[]> allowed;
  private final boolean free;
  private final List<List<int[]>> known = new ArrayList<>();
  private final List<int[]> accepted = new ArrayList<>();
  private int asked;

  Refusals(Levels levels, PairRows.Problem problem) {
    this.levels = levels;
    this.allowed = problem.allowed();
    this.free = problem.free();
    for (int level = 0; level < levels.count(); level++) {
      known.add(new ArrayList<>());
    }
  }

  /** Whether so much was asked that nothing should be asked any more just to save a row. */
  boolean spent() {
    return asked > MANY;
  }

  /** Whether a level is known not to go with the others of a row. */
  boolean bars(int level, int[] row) {
    return bar(level, row).length > 0;
  }

  /** Levels that do not go together, the given one and others of a row; empty if none are known. */
  int[] bar(int level, int[] row) {
    for (int[] part : known.get(level)) {
      if (isWithin(part, level, row)) {
        return part;
      }
    }
    return NONE;
  }

  /** Whether two levels are known not to go together. */
  boolean barsPair(int one, int other) {
    int[] row = levels.openRow();
    row[levels.factor(one)] = one;
    return bars(one, row) || bars(other, row);
  }

  private boolean isWithin(int[] part, int level, int[] row) {
    for (int one : part) {
      if (one != level && row[levels.factor(one)] != one) {
        return false;
      }
    }
    return true;
  }

  /** Whether a row can be. */
  boolean accepts(int[] row) {
    if (free || accepted.stream().anyMatch(whole -> isPart(row, whole))) {
      return true;
    }
    return !isBarred(row) && ask(row);
  }

  private static boolean isPart(int[] row, int[] whole) {
    for (int factor = 0; factor < row.length; factor++) {
      if (row[factor] != Levels.OPEN && row[factor] != whole[factor]) {
        return false;
      }
    }
    return true;
  }

  private boolean isBarred(int[] row) {
    return Arrays.stream(row).anyMatch(level -> level != Levels.OPEN && bars(level, row));
  }

  private boolean ask(int[] row) {
    asked++;
    boolean answer = allowed.test(levels.local(row));
    if (answer) {
      accepted.removeIf(part -> isPart(part, row));
      accepted.add(row.clone());
    }
    return answer;
  }

  /**
   * How many levels of a row can be together, counted along an order of its factors. If not all of
   * them, it is known from then on why the next cannot be.
   *
   * @param row of levels of which no part is known to be refused
   */
  int together(int[] row, int[] order) {
    if (accepts(row)) {
      return order.length;
    }
    int[] part = levels.openRow();
    int rest = shortest(part, row, order, order.length) - 1;
    int together = rest;
    part[order[rest]] = row[order[rest]];
    while (!spent() && accepts(part)) {
      rest = shortest(part, row, order, rest) - 1;
      part[order[rest]] = row[order[rest]];
    }
    remember(spent() ? with(part, row, order, together) : part);
    return together;
  }

  /** How many levels of a row have to be added to a part that can be until it cannot be. */
  private int shortest(int[] part, int[] row, int[] order, int refused) {
    int fine = 0;
    int bad = refused;
    while (bad - fine > 1) {
      int middle = (fine + bad) / 2;
      if (accepts(with(part, row, order, middle))) {
        fine = middle;
      } else {
        bad = middle;
      }
    }
    return bad;
  }

  private static int[] with(int[] part, int[] row, int[] order, int count) {
    int[] more = part.clone();
    for (int i = 0; i < count; i++) {
      more[order[i]] = row[order[i]];
    }
    return more;
  }

  private void remember(int[] part) {
    if (!isBarred(part)) {
      int[] refused = Arrays.stream(part).filter(level -> level != Levels.OPEN).toArray();
      Arrays.stream(refused).forEach(level -> known.get(level).add(refused));
    }
  }
}
