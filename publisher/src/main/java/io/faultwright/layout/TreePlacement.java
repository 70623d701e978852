package io.faultwright.layout;

import io.faultwright.flow.Node;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Places a tree from the top down: each node right below the one that leads to it, its branches
 * side by side in the order of the answers and as close as their outlines allow. Branches hang
 * without regard to rows further left or right, so that a tall check makes no room elsewhere. What
 * was placed once is remembered, as attempts at breaking a chart share most of their branches.
 *
 * <p>The idea of pushing finished branches together along their outlines is that of E. Reingold, J.
 * Tilford, "Tidier Drawings of Trees", IEEE Transactions on Software Engineering SE-7 (1981); that
 * nodes of different height need no rows, of A. van der Ploeg, "Drawing non-layered tidy trees in
 * linear time", Software: Practice and Experience 44 (2014). Lines never cross: each stays within
 * the room of its own node and branches.
 */
final class TreePlacement {
  private final Figures figures;
  private final Typography type;
  private final Map<Tree, Map<Double, Branch>> known = new IdentityHashMap<>();
  private final Map<Node, Map<String, Slot>> slots = new IdentityHashMap<>();

  TreePlacement(Typography type) {
    this.figures = new Figures(type);
    this.type = type;
  }

  Placement place(Tree tree) {
    Branch branch = branch(tree, slot(tree.node(), ""));
    Extent extent = Extent.of(branch.boxes());
    return new Placement(
        Grid.up(extent.right() - extent.left()),
        Grid.up(extent.bottom()),
        branch,
        new Point(-extent.left(), 0));
  }

  /** A node with all below it; the line that enters it comes down at x = 0 from y = 0. */
  private Branch branch(Tree tree, Slot slot) {
    Map<Double, Branch> before = known.computeIfAbsent(tree, none -> new HashMap<>());
    Branch branch = before.get(slot.headroom());
    if (branch == null || branch.slot().answer() != slot.answer()) {
      branch = placed(tree, slot);
      before.put(slot.headroom(), branch);
    }
    return branch;
  }

  private Branch placed(Tree tree, Slot slot) {
    if (tree.limbs().isEmpty()) {
      return Branch.leaf(slot);
    }
    List<Branch> below = new ArrayList<>();
    List<Slot> slots = level(tree.limbs());
    for (int i = 0; i < slots.size(); i++) {
      below.add(branch(tree.limbs().get(i).tree(), slots.get(i)));
    }
    double[] places = new Spread(below, between(), clear()).places();
    double middle = Grid.half((places[0] + places[places.length - 1]) / 2);
    double top = slot.height() + drop();
    List<Branch.Hanging> hanging = new ArrayList<>();
    for (int i = 0; i < places.length; i++) {
      hanging.add(new Branch.Hanging(below.get(i), places[i] - middle, top));
    }
    return Branch.node(slot, hanging, slot.height() + Grid.half(drop() / 2));
  }

  /** The slots of answers, so high that the figures below start level. */
  private List<Slot> level(List<Tree.Limb> limbs) {
    List<Slot> slots = limbs.stream().map(limb -> slot(limb.tree().node(), limb.answer())).toList();
    double headroom = slots.stream().mapToDouble(Slot::headroom).max().orElse(0);
    return slots.stream().map(slot -> slot.withHeadroom(headroom)).toList();
  }

  private Slot slot(Node node, String answer) {
    return slots
        .computeIfAbsent(node, none -> new HashMap<>())
        .computeIfAbsent(answer, none -> Slot.of(node, answer, figures, type));
  }

  /** Between figures side by side. */
  private double between() {
    return Grid.half(type.size() * 1.4);
  }

  /** Between figures one above the other that no line joins. */
  private double clear() {
    return Grid.half(type.size());
  }

  /** From the foot of a figure to the slots below it. */
  private double drop() {
    return Grid.even(type.size() * 1.4);
  }

  /** How far a branch reaches from its entry. */
  private record Extent(double left, double right, double bottom) {
    static Extent of(List<Box> boxes) {
      return new Extent(
          boxes.stream().mapToDouble(Box::x).min().orElse(0),
          boxes.stream().mapToDouble(Box::right).max().orElse(0),
          boxes.stream().mapToDouble(Box::bottom).max().orElse(0));
    }
  }
}
