package io.faultwright.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * A node with all below it, the line that enters it coming down at x = 0 from y = 0. Only the room
 * it takes is known; nothing is drawn before it is known where the branch stands, as most are only
 * tried.
 *
 * @param slot its top
 * @param below what hangs from it, left to right
 * @param turn how far down the lines to what hangs from it turn aside
 * @param boxes all room it takes
 */
record Branch(Slot slot, List<Hanging> below, double turn, List<Box> boxes) {
  /**
   * A branch below a node.
   *
   * @param branch what hangs there
   * @param x of its entry, from that of the node
   * @param y of its entry, from that of the node
   */
  record Hanging(Branch branch, double x, double y) {}

  static Branch leaf(Slot slot) {
    return new Branch(slot, List.of(), 0, slot.boxes(0, 0));
  }

  /** A node above branches, the line between them turning at a height. */
  static Branch node(Slot slot, List<Hanging> below, double turn) {
    List<Box> boxes = new ArrayList<>(slot.boxes(0, 0));
    boxes.add(lines(slot.height(), below));
    for (Hanging hanging : below) {
      for (Box box : hanging.branch.boxes) {
        boxes.add(box.shifted(hanging.x, hanging.y));
      }
    }
    return new Branch(slot, below, turn, boxes);
  }

  private static Box lines(double top, List<Hanging> below) {
    double left = Math.min(0, below.get(0).x);
    double right = Math.max(0, below.get(below.size() - 1).x);
    return new Box(left, top, right - left, below.get(0).y - top);
  }

  /** Draws all of it, its entry being at a place; nodes and lines in reading order. */
  void draw(Point at, List<PlacedNode> nodes, List<PlacedEdge> edges) {
    nodes.add(slot.placed(at.x(), at.y()));
    below.forEach(hanging -> edges.add(edge(hanging).shifted(at.x(), at.y())));
    below.forEach(hanging -> hanging.branch.draw(at.shifted(hanging.x, hanging.y), nodes, edges));
  }

  private PlacedEdge edge(Hanging to) {
    Slot entered = to.branch.slot;
    Point start = new Point(0, slot.height());
    Point end = new Point(to.x, to.y + entered.headroom());
    List<Point> line =
        to.x == 0
            ? List.of(start, end)
            : List.of(start, new Point(0, turn), new Point(to.x, turn), end);
    return new PlacedEdge(slot.node().id(), entered.node().id(), line, entered.label(to.x, to.y));
  }
}
