package io.faultwright.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

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
  private final Map<Tree, Map<String, Slot>> slots = new IdentityHashMap<>();

  TreePlacement(Typography type) {
    this.figures = new Figures(type);
    this.type = type;
  }

  Placement place(Tree tree) {
    Branch branch = branch(tree, slot(tree, ""));
    Extent extent = branch.extent();
    return new Placement(
        Grid.up(extent.right() - extent.left()),
        Grid.up(extent.bottom()),
        branch.nodes().stream().map(node -> node.shifted(-extent.left(), 0)).toList(),
        branch.edges().stream().map(edge -> edge.shifted(-extent.left(), 0)).toList());
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
    List<Branch> placed = new ArrayList<>();
    for (int i = 0; i < places.length; i++) {
      placed.add(below.get(i).shifted(places[i] - middle, top));
    }
    return Branch.node(slot, placed, slot.height() + Grid.half(drop() / 2));
  }

  /** The slots of answers, so high that the figures below start level. */
  private List<Slot> level(List<Tree.Limb> limbs) {
    List<Slot> slots = limbs.stream().map(limb -> slot(limb.tree(), limb.answer())).toList();
    double headroom = slots.stream().mapToDouble(Slot::headroom).max().orElse(0);
    return slots.stream().map(slot -> slot.withHeadroom(headroom)).toList();
  }

  private Slot slot(Tree tree, String answer) {
    return slots
        .computeIfAbsent(tree, none -> new HashMap<>())
        .computeIfAbsent(answer, none -> Slot.of(tree, answer, figures, type));
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

  /**
   * A placed branch.
   *
   * @param slot its top
   * @param entry where the line that enters it comes from
   * @param nodes in reading order
   * @param edges in reading order
   * @param boxes all room it takes
   */
  record Branch(
      Slot slot, Point entry, List<PlacedNode> nodes, List<PlacedEdge> edges, List<Box> boxes) {
    static Branch leaf(Slot slot) {
      return new Branch(
          slot, new Point(0, 0), List.of(slot.node(0, 0)), List.of(), slot.boxes(0, 0));
    }

    /** A node above branches, the line between them turning at a height. */
    static Branch node(Slot slot, List<Branch> below, double turn) {
      List<PlacedEdge> edges = new ArrayList<>();
      below.forEach(branch -> edges.add(edge(slot, branch, turn)));
      List<Box> boxes = new ArrayList<>(slot.boxes(0, 0));
      boxes.add(lines(slot.height(), below));
      below.forEach(branch -> boxes.addAll(branch.boxes));
      below.forEach(branch -> edges.addAll(branch.edges));
      List<PlacedNode> nodes =
          Stream.concat(
                  Stream.of(slot.node(0, 0)),
                  below.stream().flatMap(branch -> branch.nodes.stream()))
              .toList();
      return new Branch(slot, new Point(0, 0), nodes, edges, boxes);
    }

    private static Box lines(double top, List<Branch> below) {
      double left = Math.min(0, below.get(0).entry.x());
      double right = Math.max(0, below.get(below.size() - 1).entry.x());
      return new Box(left, top, right - left, below.get(0).entry.y() - top);
    }

    private static PlacedEdge edge(Slot slot, Branch to, double turn) {
      Point start = new Point(0, slot.height());
      Point end = new Point(to.entry.x(), to.entry.y() + to.slot.headroom());
      List<Point> line =
          to.entry.x() == 0
              ? List.of(start, end)
              : List.of(start, new Point(0, turn), new Point(to.entry.x(), turn), end);
      return new PlacedEdge(
          slot.tree().node().id(),
          to.slot.tree().node().id(),
          line,
          to.slot.label(to.entry.x(), to.entry.y()));
    }

    Branch shifted(double dx, double dy) {
      return new Branch(
          slot,
          entry.shifted(dx, dy),
          nodes.stream().map(node -> node.shifted(dx, dy)).toList(),
          edges.stream().map(edge -> edge.shifted(dx, dy)).toList(),
          boxes.stream().map(box -> box.shifted(dx, dy)).toList());
    }

    Extent extent() {
      return Extent.of(boxes);
    }
  }
}
