package io.faultwright.measure;

import java.util.Collections;
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
}
