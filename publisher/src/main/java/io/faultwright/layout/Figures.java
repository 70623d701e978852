package io.faultwright.layout;

import io.faultwright.flow.Node;

/** Draws every kind of node at one text size. */
final class Figures {
  private final CheckFigure checks;
  private final TerminatorFigure terminators;
  private final ConnectorFigure connectors;

  Figures(Typography type) {
    this.checks = new CheckFigure(type);
    this.terminators = new TerminatorFigure(type);
    this.connectors = new ConnectorFigure(type);
  }

  Figure of(Node node) {
    return node.match(terminators::of, checks::of, terminators::of, connectors::of);
  }
}
