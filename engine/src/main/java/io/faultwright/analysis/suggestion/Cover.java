package io.faultwright.analysis.suggestion;

import java.util.List;

/** How often each wanted pair of levels stands in some rows, and which ones do not. */
final class Cover {
  /** More often than rows can bring about or undo: never missing, never missed. */
  private static final int UNWANTED = 1 << 30;

  private final int levels;
  private final int[] times;
  private final int[] missing;
  private final int[] position;
  private final int[] missingOf;
  private int size;

  /** No rows yet. */
  Cover(Levels levels, PairRows.PairTest wanted) {
    this.levels = levels.count();
    this.times = new int[this.levels * this.levels];
    this.position = new int[times.length];
    this.missing = new int[times.length / 2];
    this.missingOf = new int[this.levels];
    for (int one = 0; one < this.levels; one++) {
      times[one * this.levels + one] = UNWANTED;
      for (int other = one + 1; other < this.levels; other++) {
        enter(one, other, isWanted(levels, wanted, one, other));
      }
    }
  }

  /** The same pairs, standing as often. */
  Cover(Cover other) {
    this.levels = other.levels;
    this.times = other.times.clone();
    this.missing = other.missing.clone();
    this.position = other.position.clone();
    this.missingOf = other.missingOf.clone();
    this.size = other.size;
  }

  private static boolean isWanted(
      Levels levels, PairRows.PairTest wanted, int level, int otherLevel) {
    int one = levels.factor(level);
    int other = levels.factor(otherLevel);
    return one != other
        && wanted.test(one, level - levels.first(one), other, otherLevel - levels.first(other));
  }

  private void enter(int one, int other, boolean wanted) {
    if (wanted) {
      miss(one, other);
    } else {
      put(one, other, UNWANTED);
    }
  }

  private void put(int one, int other, int count) {
    times[one * levels + other] = count;
    times[other * levels + one] = count;
  }

  /** How many wanted pairs stand in no row. */
  int missing() {
    return size;
  }

  /** How many wanted pairs with this level stand in no row. */
  int missingOf(int level) {
    return missingOf[level];
  }

  /** The lower level of a missing pair. */
  int one(int index) {
    return missing[index] / levels;
  }

  /** The upper level of a missing pair. */
  int other(int index) {
    return missing[index] % levels;
  }

  boolean misses(int one, int other) {
    return times[one * levels + other] == 0;
  }

  /** A pair that cannot be is wanted no longer. */
  void giveUp(int one, int other) {
    if (misses(one, other)) {
      found(one, other);
      put(one, other, UNWANTED);
    }
  }

  /** How many missing pairs a level would bring into a row. */
  int gain(int level, int[] row) {
    return standing(level, row, 0);
  }

  /** How many pairs would be missing if a level left a row. */
  int loss(int level, int[] row) {
    return level == Levels.OPEN ? 0 : standing(level, row, 1);
  }

  private int standing(int level, int[] row, int often) {
    int base = level * levels;
    int count = 0;
    for (int there : row) {
      if (there != Levels.OPEN && times[base + there] == often) {
        count++;
      }
    }
    return count;
  }

  /** Puts a level, or {@link Levels#OPEN}, at a factor of a row that was added. */
  void set(int[] row, int factor, int level) {
    int before = row[factor];
    row[factor] = Levels.OPEN;
    if (before != Levels.OPEN) {
      count(before, row, -1);
    }
    if (level != Levels.OPEN) {
      count(level, row, 1);
    }
    row[factor] = level;
  }

  private void count(int level, int[] row, int more) {
    for (int there : row) {
      if (there != Levels.OPEN) {
        count(level, there, more);
      }
    }
  }

  private void count(int one, int other, int more) {
    int before = times[one * levels + other];
    if (before < UNWANTED / 2) {
      put(one, other, before + more);
      if (before == 0) {
        found(Math.min(one, other), Math.max(one, other));
      } else if (before + more == 0) {
        miss(Math.min(one, other), Math.max(one, other));
      }
    }
  }

  private void miss(int one, int other) {
    int pair = one * levels + other;
    missing[size] = pair;
    position[pair] = size++;
    missingOf[one]++;
    missingOf[other]++;
  }

  private void found(int one, int other) {
    int last = missing[--size];
    int at = position[Math.min(one, other) * levels + Math.max(one, other)];
    missing[at] = last;
    position[last] = at;
    missingOf[one]--;
    missingOf[other]--;
  }

  void add(int[] row) {
    for (int one = 0; one < row.length; one++) {
      for (int other = one + 1; other < row.length && row[one] != Levels.OPEN; other++) {
        if (row[other] != Levels.OPEN) {
          count(row[one], row[other], 1);
        }
      }
    }
  }

  /** Opens, in rows of which none was added, what no wanted pair needs. */
  void strip(List<int[]> rows) {
    rows.forEach(this::add);
    for (int[] row : rows) {
      for (int factor = 0; factor < row.length; factor++) {
        if (row[factor] != Levels.OPEN && loss(row[factor], row) == 0) {
          set(row, factor, Levels.OPEN);
        }
      }
    }
  }
}
