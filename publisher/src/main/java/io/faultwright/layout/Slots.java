package io.faultwright.layout;

import java.util.ArrayList;
import java.util.List;

/** Measures every node of a tree, row by row, so that the figures of a row start at one height. */
final class Slots {
  private final Figures figures;
  private final Typography type;

  Slots(Typography type) {
    this.figures = new Figures(type);
    this.type = type;
  }

  /** The slots of a tree, in the order of {@link Tree#nodes()}. */
  List<Slot> of(Tree tree) {
    List<Double> headrooms = new ArrayList<>();
    List<Integer> depths = new ArrayList<>();
    List<Slot> slots = new ArrayList<>();
    measure(tree, "", 0, slots, depths, headrooms);
    for (int i = 0; i < slots.size(); i++) {
      slots.set(i, slots.get(i).withHeadroom(headrooms.get(depths.get(i))));
    }
    return slots;
  }

  private void measure(
      Tree tree,
      String answer,
      int depth,
      List<Slot> slots,
      List<Integer> depths,
      List<Double> headrooms) {
    Slot slot = Slot.of(tree, answer, figures, type);
    slots.add(slot);
    depths.add(depth);
    if (headrooms.size() <= depth) {
      headrooms.add(0.0);
    }
    headrooms.set(depth, Math.max(headrooms.get(depth), slot.headroom()));
    for (Tree.Limb limb : tree.limbs()) {
      measure(limb.tree(), limb.answer(), depth + 1, slots, depths, headrooms);
    }
  }
}
