package io.faultwright.layout;

import io.faultwright.flow.Node;
import io.faultwright.flow.Node.Check;
import io.faultwright.flow.Node.Connector;
import io.faultwright.flow.Node.Connector.Side;
import io.faultwright.flow.Warning;
import java.util.List;
import java.util.stream.Stream;

/**
 * A stretch of a chart that is drawn in one piece.
 *
 * @param id id of the node on top
 * @param tree what is drawn, an entry connector on top unless it is the start
 * @param exits ids of the parts it leads to, left to right
 * @param warnings what its checks warn of at more length than they can print
 * @param weight how much it fills a page: two for a node, one for a connector
 */
record Part(String id, Tree tree, List<String> exits, List<Warning> warnings, int weight) {
  /** About twelve nodes a page, each of weight two, and a few connectors of weight one. */
  static final int FULL = 27;

  private static final String UNMARKED = "";

  Part {
    exits = List.copyOf(exits);
    warnings = List.copyOf(warnings);
  }

  /** A part that begins at the start, or that other parts lead to. */
  static Part of(Tree tree) {
    String id = tree.node().id();
    return drawn(id, tree.node() instanceof Node.Start ? tree : entered(id, tree));
  }

  /** A part as it is drawn. */
  static Part drawn(String id, Tree tree) {
    List<Node> nodes = tree.nodes().map(Tree::node).toList();
    int weight = nodes.stream().mapToInt(node -> node instanceof Connector ? 1 : 2).sum();
    return new Part(id, tree, exits(nodes), warnings(nodes), weight);
  }

  private static List<String> exits(List<Node> nodes) {
    return nodes.stream()
        .flatMap(node -> node instanceof Connector connector ? Stream.of(connector) : Stream.of())
        .filter(connector -> connector.side() == Side.EXIT)
        .map(Connector::id)
        .toList();
  }

  private static List<Warning> warnings(List<Node> nodes) {
    return nodes.stream()
        .flatMap(node -> node instanceof Check check ? check.warnings().stream() : Stream.of())
        .filter(Warning::hasMore)
        .distinct()
        .toList();
  }

  private static Tree entered(String id, Tree tree) {
    Connector entry = new Connector(id, UNMARKED, Side.ENTRY, List.of(0));
    return new Tree(entry, List.of(new Tree.Limb("", tree)));
  }

  /** An exit to the part of that id, its mark and page not known yet. */
  static Tree exitTo(String id) {
    return new Tree(new Connector(id, UNMARKED, Side.EXIT, List.of(0)), List.of());
  }
}
