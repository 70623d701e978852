package io.faultwright.layout;

import io.faultwright.flow.Node;
import java.util.HashMap;
import java.util.Map;

/** Draws every kind of node at one text size, each once. */
final class Figures {
  private final CheckFigure checks;
  private final TerminatorFigure terminators;
  private final ConnectorFigure connectors;
  private final Map<Node, Figure> drawn = new HashMap<>();

  Figures(Typography type) {
    this.checks = new CheckFigure(type);
    this.terminators = new TerminatorFigure(type);
    this.connectors = new ConnectorFigure(type);
  }

  Figure of(Node node) {
    return drawn.computeIfAbsent(node, this::draw);
  }

  private Figure draw(Node node) {
    return node.match(terminators::of, checks::of, terminators::of, connectors::of);
  }
}
