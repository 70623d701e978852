package io.faultwright.diagnostic;

import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.List;

/** Collects every problem of a run, so that a person mends them all at once. */
public final class Problems {
  private final List<Problem> found = new ArrayList<>();

  public void add(Problem problem) {
    found.add(problem);
  }

  public void add(Place place, String message, String help) {
    add(Problem.at(place, message, help));
  }

  public void addAll(Problems others) {
    found.addAll(others.found);
  }

  public boolean isEmpty() {
    return found.isEmpty();
  }

  /** How many were added so far; tells whether a step found any. */
  public int count() {
    return found.size();
  }

  /** All problems without repeats, sorted by file, line and column. */
  public List<Problem> sorted() {
    return found.stream().distinct().sorted().toList();
  }
}
