package io.faultwright.analysis.space;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Splits situations into parts in which few of many sets lie, so that each part can be looked at
 * alone. A diagram of thousands of rules joined can be huge although what they leave out is small;
 * parts keep what has to be joined small. Which axis is split next is chosen in each part anew.
 */
final class Parts {
  private static final int FEW = 8;

  private final Diagrams diagrams;
  private final int[] sets;
  private final BitSet[][] around;
  private final List<Column> columns = new ArrayList<>();
  private final List<Part> parts = new ArrayList<>();

  /**
   * A part.
   *
   * @param situations the situations in it
   * @param sets positions, ascending, of the sets that can have situations in it
   */
  record Part(int situations, int[] sets) {}

  private Parts(Diagrams diagrams, int[] sets) {
    this.diagrams = diagrams;
    this.sets = sets.clone();
    this.around = new BitSet[sets.length][];
    Arrays.setAll(around, set -> diagrams.occurring(sets[set]));
    for (int axis = 0; axis < diagrams.axes(); axis++) {
      int at = axis;
      BitSet[] cells = new BitSet[sets.length];
      Arrays.setAll(cells, set -> around[set][at]);
      columns.add(new Column(axis, diagrams.size(axis), cells));
    }
  }

  /**
   * Splits some situations.
   *
   * @param sets diagrams, none of them {@link Diagrams#NONE}
   */
  static Parts of(Diagrams diagrams, int situations, int[] sets) {
    Parts parts = new Parts(diagrams, sets);
    int[] positions = IntStream.range(0, sets.length).toArray();
    parts.split(situations, positions, diagrams.everything());
    return parts;
  }

  List<Part> all() {
    return parts;
  }

  /** The diagram of a set. */
  int set(int position) {
    return sets[position];
  }

  /** For every axis the cells in which a set has situations. */
  BitSet[] around(int position) {
    return around[position];
  }

  private void split(int situations, int[] sets, BitSet[] left) {
    diagrams.checkTime();
    if (situations == Diagrams.NONE) {
      return;
    }
    Optional<Column.Split> best = sets.length <= FEW ? Optional.empty() : best(sets, left);
    if (best.isEmpty()) {
      parts.add(new Part(situations, sets));
      return;
    }
    int axis = best.get().axis();
    for (BitSet half : List.of(best.get().one(), best.get().other())) {
      BitSet[] there = left.clone();
      there[axis] = half;
      int inside = diagrams.and(situations, diagrams.literal(axis, half));
      split(inside, columns.get(axis).meeting(sets, half), there);
    }
  }

  /** The cheapest split, where splitting saves work at all. */
  private Optional<Column.Split> best(int[] sets, BitSet[] left) {
    Optional<Column.Split> best = Optional.empty();
    double cost = Column.cost(sets.length);
    for (int axis = 0; axis < left.length; axis++) {
      Optional<Column.Split> split = columns.get(axis).best(sets, left[axis]);
      if (split.isPresent() && split.get().cost() < cost) {
        best = split;
        cost = split.get().cost();
      }
    }
    return best;
  }
}
