package io.faultwright.layout;

import java.util.List;

/**
 * A flow line where it is drawn; lines of one node share their first stretch.
 *
 * @param from id of the node it leaves
 * @param to id of the node it enters
 * @param line its corners, from the foot of one node to the head of the other
 * @param label the answer, beside the last stretch
 */
public record PlacedEdge(String from, String to, List<Point> line, List<Text> label) {
  public PlacedEdge {
    line = List.copyOf(line);
    label = List.copyOf(label);
  }

  PlacedEdge shifted(double dx, double dy) {
    return new PlacedEdge(
        from,
        to,
        line.stream().map(point -> point.shifted(dx, dy)).toList(),
        label.stream().map(text -> text.shifted(dx, dy)).toList());
  }
}
