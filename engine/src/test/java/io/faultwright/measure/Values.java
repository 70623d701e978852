package io.faultwright.measure;

import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Some values of a column.
 *
 * @param chosen their positions among the column's values
 */
record Values(SortedSet<Integer> chosen) implements Part {
  Values {
    chosen = Collections.unmodifiableSortedSet(new TreeSet<>(chosen));
  }

  @Override
  public boolean meets(Part other) {
    return !Collections.disjoint(chosen, ((Values) other).chosen);
  }

  static Values of(int value) {
    return new Values(new TreeSet<>(List.of(value)));
  }

  /** From one position to another, both included. */
  static Values closed(int first, int last) {
    SortedSet<Integer> chosen = new TreeSet<>();
    for (int value = first; value <= last; value++) {
      chosen.add(value);
    }
    return new Values(chosen);
  }
}
