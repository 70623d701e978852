package io.faultwright.layout;

import java.util.List;
import java.util.Optional;

/**
 * A printable page of a chart.
 *
 * @param width of the paper as it is turned, in points
 * @param height of the paper as it is turned
 * @param number which page of the chart
 * @param count how many pages the chart has
 * @param title of the page, for those who do not see it
 * @param frame outlines of the frame
 * @param texts lines of head and foot
 * @param code the address of the online page, where there is one
 * @param nodes the figures, in reading order
 * @param edges the flow lines, in reading order
 */
public record ChartPage(
    int width,
    int height,
    int number,
    int count,
    String title,
    List<Shape> frame,
    List<Text> texts,
    Optional<QrSymbol> code,
    List<PlacedNode> nodes,
    List<PlacedEdge> edges) {
  public ChartPage {
    frame = List.copyOf(frame);
    texts = List.copyOf(texts);
    nodes = List.copyOf(nodes);
    edges = List.copyOf(edges);
  }
}
