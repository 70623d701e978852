package io.faultwright.analysis.space;

import io.faultwright.analysis.space.Parts.Part;
import java.util.SortedSet;
import java.util.TreeSet;

/** Which of many sets have a situation in common. */
final class Meetings {
  private final Diagrams diagrams;
  private final Parts split;
  private final SortedSet<Pair> pairs = new TreeSet<>();

  /** Positions of two sets. */
  record Pair(int one, int other) implements Comparable<Pair> {
    @Override
    public int compareTo(Pair that) {
      int order = Integer.compare(one, that.one);
      return order != 0 ? order : Integer.compare(other, that.other);
    }
  }

  Meetings(Diagrams diagrams, Parts split) {
    this.diagrams = diagrams;
    this.split = split;
    split.all().forEach(this::compare);
  }

  private void compare(Part part) {
    int[] here = part.sets();
    for (int i = 0; i < here.length; i++) {
      diagrams.checkTime();
      for (int j = i + 1; j < here.length; j++) {
        if (meet(here[i], here[j])) {
          pairs.add(new Pair(here[i], here[j]));
        }
      }
    }
  }

  private boolean meet(int one, int other) {
    return diagrams.meets(split.set(one), split.around(other))
        && diagrams.and(split.set(one), split.set(other)) != Diagrams.NONE;
  }

  /** Each pair that meets, once, in ascending order. */
  SortedSet<Pair> pairs() {
    return pairs;
  }
}
