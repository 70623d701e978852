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

  /** The slots of a tree row by row, each row from left to right. */
  List<List<Slot>> rows(Tree tree) {
    List<List<Slot>> rows = new ArrayList<>();
    measure(tree, "", 0, rows);
    return rows.stream().map(Slots::levelled).toList();
  }

  private void measure(Tree tree, String answer, int depth, List<List<Slot>> rows) {
    if (rows.size() <= depth) {
      rows.add(new ArrayList<>());
    }
    rows.get(depth).add(Slot.of(tree, answer, figures, type));
    tree.limbs().forEach(limb -> measure(limb.tree(), limb.answer(), depth + 1, rows));
  }

  private static List<Slot> levelled(List<Slot> row) {
    double headroom = row.stream().mapToDouble(Slot::headroom).max().orElse(0);
    return row.stream().map(slot -> slot.withHeadroom(headroom)).toList();
  }
}
