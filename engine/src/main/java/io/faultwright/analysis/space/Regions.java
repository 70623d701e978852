package io.faultwright.analysis.space;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Covers a set of situations with few, maximal boxes. A box may hold situations that cannot happen
 * (they are don't-cares), so that its words stay short; it never holds a possible situation outside
 * the set.
 */
public final class Regions {
  private final Space space;
  private final Diagrams diagrams;
  private final Witness witness;
  private final BitSet silent = new BitSet();

  public Regions(Space space) {
    this.space = space;
    this.diagrams = space.diagrams();
    this.witness = new Witness(space);
    for (int axis = 0; axis < space.axes().size(); axis++) {
      silent.set(axis, space.axes().get(axis).groupCount() == 1);
    }
  }

  /**
   * Boxes that together hold exactly the part of {@code possible} that is in {@code wanted},
   * largest first.
   */
  public List<Box> cover(int wanted, int possible) {
    return cover(wanted, possible, Integer.MAX_VALUE);
  }

  /** As {@link #cover(int, int)}, but no more than so many boxes; those may then leave some out. */
  public List<Box> cover(int wanted, int possible, int most) {
    int forbidden = diagrams.minus(possible, wanted);
    int left = diagrams.and(wanted, possible);
    List<Box> boxes = new ArrayList<>();
    int covered = Diagrams.NONE;
    while (left != Diagrams.NONE && boxes.size() < most) {
      diagrams.checkTime();
      Box box = grown(witness.path(left), forbidden);
      boxes.add(box);
      int inside = diagrams.and(wanted, diagrams.box(box.array()));
      covered = diagrams.or(covered, inside);
      left = diagrams.minus(left, inside);
    }
    return sorted(withoutSuperfluous(boxes, diagrams.and(covered, possible)), wanted);
  }

  /** What boxes leave of some situations. */
  public int without(int situations, List<Box> boxes) {
    int left = situations;
    for (Box box : boxes) {
      left = diagrams.minus(left, diagrams.box(box.array()));
    }
    return left;
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
            .thenComparing(axis -> !silent.get(axis))
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

  /** To every cell of the axis that brings nothing forbidden into the box. */
  private void grow(BitSet[] box, int axis, int forbidden) {
    BitSet free = space.axes().get(axis).all();
    free.andNot(diagrams.reached(forbidden, box, axis));
    box[axis].or(free);
  }

  /** Without boxes that lie in the others; each is compared with those kept and those to come. */
  private List<Box> withoutSuperfluous(List<Box> boxes, int target) {
    int[] later = new int[boxes.size()];
    for (int i = boxes.size() - 2; i >= 0; i--) {
      later[i] = diagrams.or(later[i + 1], diagrams.box(boxes.get(i + 1).array()));
    }
    List<Box> kept = new ArrayList<>();
    int earlier = Diagrams.NONE;
    for (int i = 0; i < boxes.size(); i++) {
      if (!diagrams.within(target, diagrams.or(earlier, later[i]))) {
        kept.add(boxes.get(i));
        earlier = diagrams.or(earlier, diagrams.box(boxes.get(i).array()));
      }
    }
    return kept;
  }

  private List<Box> sorted(List<Box> boxes, int wanted) {
    record Sized(Box box, BigInteger situations) {}
    return boxes.stream()
        .map(
            box ->
                new Sized(
                    box, space.distinguishable(diagrams.and(wanted, diagrams.box(box.array())))))
        .sorted(Comparator.comparing(Sized::situations).reversed())
        .map(Sized::box)
        .toList();
  }
}
