package io.faultwright.layout;

import io.faultwright.flow.Node;
import io.faultwright.flow.Node.Connector;
import io.faultwright.flow.Node.Connector.Side;
import java.util.List;
import java.util.stream.Stream;

/**
 * A stretch of a chart that is drawn in one piece.
 *
 * @param id id of the node on top
 * @param tree what is drawn, an entry connector on top unless it is the start
 */
record Part(String id, Tree tree) {
  /** About twelve nodes a page, each of weight two, and a few connectors of weight one. */
  static final int FULL = 27;

  private static final String UNMARKED = "";

  /** A part that begins at the start, or that other parts lead to. */
  static Part of(Tree tree) {
    String id = tree.node().id();
    return new Part(id, tree.node() instanceof Node.Start ? tree : entered(id, tree));
  }

  private static Tree entered(String id, Tree tree) {
    Connector entry = new Connector(id, UNMARKED, Side.ENTRY, List.of(0));
    return new Tree(entry, List.of(new Tree.Limb("", tree)));
  }

  /** An exit to the part of that id, its mark and page not known yet. */
  static Tree exitTo(String id) {
    return new Tree(new Connector(id, UNMARKED, Side.EXIT, List.of(0)), List.of());
  }

  /** Ids of the parts it leads to, left to right. */
  Stream<String> exits() {
    return tree.nodes()
        .map(Tree::node)
        .flatMap(node -> node instanceof Connector connector ? Stream.of(connector) : Stream.of())
        .filter(connector -> connector.side() == Side.EXIT)
        .map(Connector::id);
  }

  /** How much it fills a page: two for a node, one for a connector. */
  static int weight(Tree tree) {
    return tree.nodes().mapToInt(part -> part.node() instanceof Connector ? 1 : 2).sum();
  }
}
