package io.faultwright.page;

import io.faultwright.source.Place;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** Puts the parts of one thing into the order in which the trainer wrote them. */
final class Written {
  private Written() {}

  static <T> List<T> order(Collection<T> things, Function<T, Place> place) {
    return things.stream().sorted(Comparator.comparing(place)).toList();
  }
}
