package io.faultwright.lesson;

import io.faultwright.layout.Box;
import io.faultwright.layout.ChartPage;
import io.faultwright.layout.PlacedEdge;
import io.faultwright.layout.Point;
import io.faultwright.layout.Trail;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What of a chart's page is shown large, in points of the page. */
final class Cutout {
  private static final double ROOM = 8;

  private Cutout() {}

  /** All its figures, without head and foot. */
  static Box whole(ChartPage page) {
    return around(
        Stream.concat(
                page.nodes().stream().map(node -> node.box()),
                page.edges().stream().map(Cutout::box))
            .toList());
  }

  /** The way as far as it has come, and the answers that lead on from its last figure. */
  static Box around(ChartPage page, Trail trail, int number) {
    Stream<Box> nodes =
        IntStream.range(0, page.nodes().size())
            .filter(i -> trail.comesTo(number, i))
            .mapToObj(i -> page.nodes().get(i).box());
    int last = trail.steps().get(trail.steps().size() - 1).node();
    Box end = page.nodes().get(last).box();
    String id = page.nodes().get(last).node().id();
    Stream<Box> next =
        page.edges().stream()
            .filter(edge -> edge.from().equals(id))
            .filter(edge -> end.overlaps(grown(box(edge))))
            .flatMap(edge -> Stream.of(box(edge), entered(page, edge)));
    return around(Stream.concat(nodes, next).toList());
  }

  private static Box entered(ChartPage page, PlacedEdge edge) {
    Box tip = grown(box(edge));
    return page.nodes().stream()
        .filter(node -> node.node().id().equals(edge.to()))
        .map(node -> node.box())
        .filter(tip::overlaps)
        .findFirst()
        .orElse(box(edge));
  }

  private static Box box(PlacedEdge edge) {
    List<Double> x = edge.line().stream().map(Point::x).sorted().toList();
    List<Double> y = edge.line().stream().map(Point::y).sorted().toList();
    int end = edge.line().size() - 1;
    return new Box(x.get(0), y.get(0), x.get(end) - x.get(0), y.get(end) - y.get(0));
  }

  private static Box grown(Box box) {
    return new Box(box.x() - 1, box.y() - 1, box.width() + 2, box.height() + 2);
  }

  private static Box around(List<Box> boxes) {
    double left = boxes.stream().mapToDouble(Box::x).min().orElseThrow();
    double top = boxes.stream().mapToDouble(Box::y).min().orElseThrow();
    double right = boxes.stream().mapToDouble(Box::right).max().orElseThrow();
    double bottom = boxes.stream().mapToDouble(Box::bottom).max().orElseThrow();
    return new Box(left - ROOM, top - ROOM, right - left + 2 * ROOM, bottom - top + 2 * ROOM);
  }
}
