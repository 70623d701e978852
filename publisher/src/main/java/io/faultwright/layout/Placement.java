package io.faultwright.layout;

import java.util.List;

/**
 * A part of a chart with coordinates, its upper left corner at 0, 0.
 *
 * @param width over all
 * @param height over all
 * @param nodes in reading order
 * @param edges in reading order
 */
record Placement(double width, double height, List<PlacedNode> nodes, List<PlacedEdge> edges) {
  Placement {
    nodes = List.copyOf(nodes);
    edges = List.copyOf(edges);
  }

  Placement shifted(double dx, double dy) {
    return new Placement(
        width,
        height,
        nodes.stream().map(node -> node.shifted(dx, dy)).toList(),
        edges.stream().map(edge -> edge.shifted(dx, dy)).toList());
  }
}
