package io.faultwright.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/** Seconds of repeated runs, and their median. */
final class Rounds {
  private final List<Double> seconds = new ArrayList<>();

  /** Runs once and notes the time. */
  <T> T time(Supplier<T> work) {
    long start = System.nanoTime();
    T result = work.get();
    note((System.nanoTime() - start) / 1e9);
    return result;
  }

  void note(double taken) {
    seconds.add(taken);
  }

  double median() {
    return sorted().get(seconds.size() / 2);
  }

  private List<Double> sorted() {
    List<Double> sorted = new ArrayList<>(seconds);
    Collections.sort(sorted);
    return sorted;
  }

  /** Lowest, median and highest. */
  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "min %.3f s, median %.3f s, max %.3f s",
        sorted().get(0),
        median(),
        sorted().get(seconds.size() - 1));
  }
}
