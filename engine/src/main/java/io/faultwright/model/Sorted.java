package io.faultwright.model;

import java.util.Collection;
import java.util.Collections;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Unmodifiable sorted copies, so that hash order never reaches an output. */
public final class Sorted {
  private Sorted() {}

  public static <V> SortedMap<String, V> copy(SortedMap<String, V> map) {
    return Collections.unmodifiableSortedMap(new TreeMap<>(map));
  }

  public static <E extends Comparable<? super E>> SortedSet<E> set(
      Collection<? extends E> elements) {
    return Collections.unmodifiableSortedSet(new TreeSet<>(elements));
  }
}
