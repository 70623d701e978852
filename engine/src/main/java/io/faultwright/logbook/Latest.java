package io.faultwright.logbook;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Counts things and keeps the last few. */
final class Latest<T> {
  private final int most;
  private final Deque<T> kept = new ArrayDeque<>();
  private long all;

  Latest(int most) {
    this.most = most;
  }

  void add(T one) {
    all++;
    if (kept.size() == most) {
      kept.poll();
    }
    if (most > 0) {
      kept.add(one);
    }
  }

  Followed.Some<T> some() {
    return new Followed.Some<>(List.copyOf(kept), all);
  }
}
