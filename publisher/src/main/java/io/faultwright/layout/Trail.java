package io.faultwright.layout;

import io.faultwright.flow.Node.Check;
import io.faultwright.flow.Node.Connector;
import io.faultwright.flow.Node.Connector.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A way along a chart where it is drawn.
 *
 * @param steps what is come to, in order
 */
public record Trail(List<Step> steps) {
  public Trail {
    steps = List.copyOf(steps);
  }

  /**
   * A node that is come to.
   *
   * @param page position of its page, from 0
   * @param node position on the page, from 0
   * @param edge position of the line that leads to it; absent where none on this page does
   */
  public record Step(int page, int node, Optional<Integer> edge) {}

  /**
   * The way where it is drawn. Nodes that are drawn more than once are taken where the way comes to
   * them, and connectors are followed.
   *
   * @param pages of one chart
   * @param nodes ids in order, the start first
   */
  public static Trail of(List<ChartPage> pages, List<String> nodes) {
    return new Walk(pages, nodes).from(0, 0, Optional.empty(), 1).map(Trail::new).orElseThrow();
  }

  /** Position of the page on which the way ends. */
  public int lastPage() {
    return steps.get(steps.size() - 1).page;
  }

  /** Whether the way ends at a node of a page. */
  public boolean endsAt(int page, int node) {
    Step last = steps.get(steps.size() - 1);
    return last.page == page && last.node == node;
  }

  /** Whether the way comes to a node of a page. */
  public boolean comesTo(int page, int node) {
    return steps.stream().anyMatch(step -> step.page == page && step.node == node);
  }

  /** Whether the way goes along a line of a page. */
  public boolean goesAlong(int page, int edge) {
    return steps.stream()
        .anyMatch(step -> step.page == page && step.edge.equals(Optional.of(edge)));
  }

  /** Looks for the way, place by place. */
  private record Walk(List<ChartPage> pages, List<String> nodes) {
    /**
     * What follows from a place.
     *
     * @param done how many of the nodes are behind
     */
    Optional<List<Step>> from(int page, int node, Optional<Integer> edge, int done) {
      Step here = new Step(page, node, edge);
      if (done == nodes.size()) {
        return Optional.of(List.of(here));
      }
      return further(page, node, done)
          .map(
              rest -> {
                List<Step> all = new ArrayList<>(List.of(here));
                all.addAll(rest);
                return all;
              });
    }

    private Optional<List<Step>> further(int page, int node, int done) {
      PlacedNode placed = pages.get(page).nodes().get(node);
      if (placed.node() instanceof Connector connector && connector.side() == Side.EXIT) {
        return entry(connector.mark(), done);
      }
      List<PlacedEdge> edges = pages.get(page).edges();
      return IntStream.range(0, edges.size())
          .filter(i -> leaves(edges.get(i), placed))
          .mapToObj(i -> along(page, i, done))
          .flatMap(Optional::stream)
          .findFirst();
    }

    /** A line is followed where it leads to the next node, or to where that can be on the way. */
    private Optional<List<Step>> along(int page, int edge, int done) {
      List<PlacedNode> placed = pages.get(page).nodes();
      int node = entered(placed, pages.get(page).edges().get(edge));
      String id = placed.get(node).node().id();
      if (id.equals(nodes.get(done))) {
        return from(page, node, Optional.of(edge), done + 1);
      }
      return isBetween(placed.get(node))
          ? from(page, node, Optional.of(edge), done)
          : Optional.empty();
    }

    /** Whether a figure is no node of the chart: a connector, or the same question once more. */
    private static boolean isBetween(PlacedNode placed) {
      return placed.node() instanceof Connector
          || placed.node() instanceof Check check && check.id().contains("/");
    }

    private Optional<List<Step>> entry(String mark, int done) {
      for (int page = 0; page < pages.size(); page++) {
        for (int node = 0; node < pages.get(page).nodes().size(); node++) {
          if (pages.get(page).nodes().get(node).node() instanceof Connector connector
              && connector.side() == Side.ENTRY
              && connector.mark().equals(mark)) {
            return from(page, node, Optional.empty(), done);
          }
        }
      }
      return Optional.empty();
    }

    private static boolean leaves(PlacedEdge edge, PlacedNode node) {
      Point start = edge.line().get(0);
      return edge.from().equals(node.node().id()) && touches(node.box(), start);
    }

    private static int entered(List<PlacedNode> nodes, PlacedEdge edge) {
      Point tip = edge.line().get(edge.line().size() - 1);
      return IntStream.range(0, nodes.size())
          .filter(i -> nodes.get(i).node().id().equals(edge.to()))
          .filter(i -> touches(nodes.get(i).box(), tip))
          .findFirst()
          .orElseThrow();
    }

    private static boolean touches(Box box, Point point) {
      return point.x() >= box.x() - NEAR
          && point.x() <= box.right() + NEAR
          && point.y() >= box.y() - NEAR
          && point.y() <= box.bottom() + NEAR;
    }

    private static final double NEAR = 0.5;
  }
}
