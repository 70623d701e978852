package io.faultwright.analysis.space;

import java.util.BitSet;
import java.util.Random;

/** Walks through diagrams for tests. */
final class Paths {
  private Paths() {}

  /** Whether a diagram holds a combination of cells. */
  static boolean holds(Space space, int diagram, int[] path) {
    int rest = diagram;
    for (int axis = 0; axis < path.length; axis++) {
      rest = space.diagrams().child(rest, axis, path[axis]);
    }
    return rest == Diagrams.ALL;
  }

  /** A combination that a diagram other than {@link Diagrams#NONE} holds. */
  static int[] any(Space space, int diagram, Random random) {
    int[] path = new int[space.axes().size()];
    int rest = diagram;
    for (int axis = 0; axis < path.length; axis++) {
      int cell = random.nextInt(space.diagrams().size(axis));
      while (space.diagrams().child(rest, axis, cell) == Diagrams.NONE) {
        cell = (cell + 1) % space.diagrams().size(axis);
      }
      path[axis] = cell;
      rest = space.diagrams().child(rest, axis, cell);
    }
    return path;
  }

  /** The diagram of one combination. */
  static int only(Space space, int[] path) {
    BitSet[] box = new BitSet[path.length];
    for (int axis = 0; axis < path.length; axis++) {
      box[axis] = new BitSet();
      box[axis].set(path[axis]);
    }
    return space.diagrams().box(box);
  }
}
