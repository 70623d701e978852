package io.faultwright.analysis.space;

import io.faultwright.analysis.space.Parts.Part;
import java.util.Arrays;
import java.util.BitSet;
import java.util.SortedSet;
import java.util.TreeSet;

/** Which of many sets have a situation in common. */
final class Meetings {
  private final Diagrams diagrams;
  private final int[] sets;
  private final BitSet[][] around;
  private final SortedSet<Pair> pairs = new TreeSet<>();

  /** Positions of two sets. */
  record Pair(int one, int other) implements Comparable<Pair> {
    @Override
    public int compareTo(Pair that) {
      int order = Integer.compare(one, that.one);
      return order != 0 ? order : Integer.compare(other, that.other);
    }
  }

  /**
   * @param situations in which all the sets lie
   * @param sets diagrams, none of them {@link Diagrams#NONE}
   */
  Meetings(Diagrams diagrams, int situations, int[] sets) {
    this.diagrams = diagrams;
    this.sets = sets.clone();
    this.around = new BitSet[sets.length][];
    Arrays.setAll(around, set -> diagrams.occurring(sets[set]));
    Parts.of(diagrams, situations, sets).forEach(this::compare);
  }

  private void compare(Part part) {
    int[] here = part.sets();
    for (int i = 0; i < here.length; i++) {
      for (int j = i + 1; j < here.length; j++) {
        if (meet(here[i], here[j])) {
          pairs.add(new Pair(here[i], here[j]));
        }
      }
    }
  }

  private boolean meet(int one, int other) {
    return diagrams.meets(sets[one], around[other])
        && diagrams.and(sets[one], sets[other]) != Diagrams.NONE;
  }

  /** Each pair that meets, once, in ascending order. */
  SortedSet<Pair> pairs() {
    return pairs;
  }
}
