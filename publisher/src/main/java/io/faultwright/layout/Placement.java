package io.faultwright.layout;

import java.util.List;

/**
 * A part of a chart and where it stands.
 *
 * @param width over all
 * @param height over all
 * @param branch what is drawn
 * @param entry where the branch begins
 */
record Placement(double width, double height, Branch branch, Point entry) {
  Placement shifted(double dx, double dy) {
    return new Placement(width, height, branch, entry.shifted(dx, dy));
  }

  /** Draws it; nodes and lines in reading order. */
  void draw(List<PlacedNode> nodes, List<PlacedEdge> edges) {
    branch.draw(entry, nodes, edges);
  }
}
