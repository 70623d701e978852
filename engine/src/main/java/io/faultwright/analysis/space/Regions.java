package io.faultwright.analysis.space;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Covers a set of situations with few, maximal boxes. A box may hold situations that cannot happen
 * (they are don't-cares), so that its words stay short; it never holds a possible situation outside
 * the set.
 */
public final class Regions {
  private final Space space;
  private final Diagrams diagrams;
  private final Witness witness;

  public Regions(Space space) {
    this.space = space;
    this.diagrams = space.diagrams();
    this.witness = new Witness(space);
  }

  /**
   * Boxes that together hold exactly the part of {@code possible} that is in {@code wanted},
   * largest first.
   */
  public List<Box> cover(int wanted, int possible) {
    int forbidden = diagrams.minus(possible, wanted);
    int left = diagrams.and(wanted, possible);
    List<Box> boxes = new ArrayList<>();
    while (left != Diagrams.NONE) {
      Box box = grown(witness.path(left), forbidden);
      boxes.add(box);
      left = diagrams.minus(left, diagrams.box(box.array()));
    }
    return sorted(withoutSuperfluous(boxes, diagrams.and(wanted, possible)), wanted);
  }

  private Box grown(int[] path, int forbidden) {
    BitSet[] box = new BitSet[path.length];
    for (int axis = 0; axis < path.length; axis++) {
      box[axis] = new BitSet();
      box[axis].set(path[axis]);
    }
    for (int axis : growthOrder(path)) {
      grow(box, axis, forbidden);
    }
    return new Box(List.of(box));
  }

  /**
   * Axes whose cell follows from others first, so that the words name those others; then axes that
   * nobody asks about, then the equipment, then the rest from the last level.
   */
  private List<Integer> growthOrder(int[] path) {
    List<Integer> order = new ArrayList<>();
    for (int axis = 0; axis < space.axes().size(); axis++) {
      order.add(axis);
    }
    order.sort(
        Comparator.comparing((Integer axis) -> !follows(axis, path[axis]))
            .thenComparing(axis -> !isSilent(axis))
            .thenComparing(axis -> axis != 0)
            .thenComparing(axis -> -axis));
    return order;
  }

  /**
   * Whether a cell says only what the equipment, or the reading that limits follow, brings along.
   */
  private boolean follows(int axis, int at) {
    Cell cell = space.axes().get(axis).cells().get(at);
    return cell instanceof Cell.Absent || cell instanceof Cell.NoFigure;
  }

  private boolean isSilent(int axis) {
    return space.axes().get(axis).groups().stream().distinct().count() == 1;
  }

  private void grow(BitSet[] box, int axis, int forbidden) {
    BitSet start = box[axis];
    box[axis] = space.axes().get(axis).all();
    if (!diagrams.meets(forbidden, box)) {
      return;
    }
    box[axis] = start;
    int from = start.nextSetBit(0);
    for (int cell = from - 1; cell >= 0; cell--) {
      tryCell(box, axis, cell, forbidden);
    }
    for (int cell = from + 1; cell < space.axes().get(axis).cells().size(); cell++) {
      tryCell(box, axis, cell, forbidden);
    }
  }

  private void tryCell(BitSet[] box, int axis, int cell, int forbidden) {
    BitSet before = box[axis];
    BitSet one = new BitSet();
    one.set(cell);
    box[axis] = one;
    boolean fits = !diagrams.meets(forbidden, box);
    box[axis] = before;
    if (fits) {
      before.set(cell);
    }
  }

  private List<Box> withoutSuperfluous(List<Box> boxes, int target) {
    List<Box> kept = new ArrayList<>(boxes);
    for (Box box : boxes) {
      Optional<Integer> rest =
          kept.stream()
              .filter(other -> other != box)
              .map(other -> diagrams.box(other.array()))
              .reduce(diagrams::or);
      if (rest.isPresent() && diagrams.within(target, rest.get())) {
        kept.remove(box);
      }
    }
    return kept;
  }

  private List<Box> sorted(List<Box> boxes, int wanted) {
    List<Box> sorted = new ArrayList<>(boxes);
    sorted.sort(
        Comparator.comparing(
                (Box box) -> space.distinguishable(diagrams.and(wanted, diagrams.box(box.array()))))
            .reversed());
    return sorted;
  }
}
