package io.faultwright.layout;

import io.faultwright.flow.Node;
import java.util.List;
import java.util.stream.Stream;

/**
 * A part of a chart as it is drawn: outcomes repeated, what stands elsewhere replaced by a
 * connector.
 *
 * @param node the node on top
 * @param limbs what its answers lead to, left to right
 */
record Tree(Node node, List<Limb> limbs) {
  Tree {
    limbs = List.copyOf(limbs);
  }

  /**
   * One answer of a node.
   *
   * @param answer as printed; empty from a start or an entry
   * @param tree what it leads to
   */
  record Limb(String answer, Tree tree) {}

  /** Every node, a parent before its limbs, left to right. */
  Stream<Tree> nodes() {
    return Stream.concat(Stream.of(this), limbs.stream().flatMap(limb -> limb.tree.nodes()));
  }

  int size() {
    return (int) nodes().count();
  }
}
