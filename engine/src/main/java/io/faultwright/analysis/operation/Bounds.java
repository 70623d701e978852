package io.faultwright.analysis.operation;

import java.util.Arrays;

/**
 * A set of moments: which values the clocks can have together, in whole steps. Kept as the greatest
 * difference of every two clocks, a further clock that is always 0 included (a difference-bound
 * matrix), as small as they follow from each other. Never changed.
 *
 * <p>The last clock is the time since the beginning. Only how early a moment can come is known of
 * it: later is always possible.
 *
 * <p>R. Alur, D. Dill, "A theory of timed automata", Theoretical Computer Science 126, 1994; J.
 * Bengtsson, W. Yi, "Timed automata: semantics, algorithms and tools", LNCS 3098, 2004 (both from
 * memory).
 */
final class Bounds {
  private static final long FREE = Long.MAX_VALUE / 4;

  private final int size;
  private final long[] most;

  private Bounds(int size, long[] most) {
    this.size = size;
    this.most = most;
  }

  /** All clocks at 0, at the beginning. */
  static Bounds zero(int clocks) {
    return new Bounds(clocks + 2, new long[(clocks + 2) * (clocks + 2)]);
  }

  /** The earliest step at which one of the moments comes. */
  long earliest() {
    return -most(0, size - 1);
  }

  private long most(int clock, int other) {
    return most[clock * size + other];
  }

  private Bounds changed() {
    return new Bounds(size, most.clone());
  }

  private void set(int clock, int other, long value) {
    most[clock * size + other] = value;
  }

  /** Whether no moment is in it. */
  boolean isEmpty() {
    for (int i = 0; i < size; i++) {
      if (most(i, i) < 0) {
        return true;
      }
    }
    return false;
  }

  /** Whether every moment of another is in it, and comes as early. */
  boolean includes(Bounds other) {
    return includes(other, size);
  }

  /** Whether every moment of another is in it, however late. */
  boolean includesLate(Bounds other) {
    return includes(other, size - 1);
  }

  private boolean includes(Bounds other, int clocks) {
    for (int i = 0; i < clocks; i++) {
      for (int j = 0; j < clocks; j++) {
        if (other.most(i, j) > most(i, j)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether the same moments are in both. */
  boolean sameAs(Bounds other) {
    return Arrays.equals(most, other.most);
  }

  /** The moments at which a clock has run at least so many steps. */
  Bounds atLeast(int clock, long steps) {
    return tightened(0, clock + 1, -steps);
  }

  /** The moments at which a clock has run at most so many steps. */
  Bounds atMost(int clock, long steps) {
    return tightened(clock + 1, 0, steps);
  }

  private Bounds tightened(int clock, int other, long value) {
    if (value >= most(clock, other)) {
      return this;
    }
    Bounds tighter = changed();
    tighter.set(clock, other, value);
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        long through = sum(sum(tighter.most(i, clock), value), tighter.most(other, j));
        tighter.set(i, j, Math.min(tighter.most(i, j), through));
      }
    }
    return tighter;
  }

  private static long sum(long one, long other) {
    return one >= FREE || other >= FREE ? FREE : one + other;
  }

  /** The moments one step or more later. */
  Bounds later() {
    Bounds later = changed();
    for (int i = 1; i < size; i++) {
      later.set(i, 0, FREE);
      later.set(0, i, most(0, i) - 1);
    }
    return later;
  }

  /** The same with a clock at 0. */
  Bounds begun(int clock) {
    Bounds begun = changed();
    int at = clock + 1;
    for (int i = 0; i < size; i++) {
      begun.set(at, i, most(0, i));
      begun.set(i, at, most(i, 0));
    }
    begun.set(at, at, 0);
    return begun;
  }

  /** The same with nothing said of a clock. */
  Bounds freed(int clock) {
    Bounds freed = changed();
    int at = clock + 1;
    for (int i = 0; i < size; i++) {
      freed.set(at, i, FREE);
      freed.set(i, at, most(i, 0));
    }
    freed.set(at, at, 0);
    return freed;
  }

  /**
   * The same with values not told apart that are greater than all with which a clock is compared.
   *
   * @param greatest such value of every clock
   */
  Bounds blurred(long[] greatest) {
    Bounds blurred = changed();
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        if (i != j) {
          blurred.set(i, j, blurred(i, j, greatest));
        }
      }
    }
    return Arrays.equals(blurred.most, most) ? this : blurred.closed();
  }

  private long blurred(int i, int j, long[] greatest) {
    long value = most(i, j);
    if (i == size - 1) {
      return FREE;
    }
    if (i > 0 && value > greatest[i - 1]) {
      return FREE;
    }
    if (j == size - 1) {
      return value;
    }
    long least = j == 0 ? 0 : -greatest[j - 1] - 1;
    return Math.max(value, least);
  }

  private Bounds closed() {
    for (int k = 0; k < size; k++) {
      for (int i = 0; i < size; i++) {
        for (int j = 0; j < size; j++) {
          set(i, j, Math.min(most(i, j), sum(most(i, k), most(k, j))));
        }
      }
    }
    return this;
  }
}
