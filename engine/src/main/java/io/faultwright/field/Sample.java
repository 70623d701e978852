package io.faultwright.field;

import io.faultwright.model.Value;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Rows of one kind: how many, the first of them, and how their readings spread. */
final class Sample {
  private static final int FIRST = 5;

  private final List<Place> first = new ArrayList<>();
  private final SortedMap<String, Histogram> readings = new TreeMap<>();
  private boolean whole = true;
  private long rows;

  void add(Place place, Map<String, Value> known, ClassBook classes, Room room) {
    rows++;
    if (first.size() < FIRST) {
      first.add(place);
    }
    known.forEach(
        (subject, value) ->
            whole &=
                readings
                    .computeIfAbsent(subject, id -> new Histogram())
                    .add(classes.of(subject).of(value), room));
  }

  long rows() {
    return rows;
  }

  List<Place> first() {
    return List.copyOf(first);
  }

  /** Whether every row could be counted in full. */
  boolean whole() {
    return whole;
  }

  /** Readings and facts that some row gives. */
  SortedMap<String, Histogram> readings() {
    return readings;
  }
}
