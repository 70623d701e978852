package io.faultwright.analysis.space;

import java.util.BitSet;

/**
 * Parts of all cell combinations, in floating point and rounded outward: quick where counting
 * exactly would take too long.
 */
final class Fractions {
  /** Far more than the rounding errors of a sum along some dozens of axes. */
  private static final double OUTWARD = 1e-9;

  private final Diagrams diagrams;
  private final int diagram;
  private final int[] nodes;
  private final double[] parts;

  /**
   * @param diagram the set whose parts are asked for
   */
  Fractions(Diagrams diagrams, int diagram) {
    this.diagrams = diagrams;
    this.diagram = diagram;
    BitSet below = new BitSet();
    collect(diagram, below);
    this.nodes = below.stream().toArray();
    this.parts = new double[diagram + 1];
  }

  private void collect(int node, BitSet below) {
    if (node <= Diagrams.ALL || below.get(node)) {
      return;
    }
    below.set(node);
    int axis = diagrams.axisOf(node);
    for (int run = 0; run < diagrams.runs(node, axis); run++) {
      collect(diagrams.runChild(node, axis, run), below);
    }
  }

  double atLeast(BitSet[] box) {
    return within(box) * (1 - OUTWARD);
  }

  double atMost(BitSet[] box) {
    return within(box) * (1 + OUTWARD);
  }

  /** How many nodes have to be looked at for each box. */
  int size() {
    return nodes.length;
  }

  /** The part that lies in a box; children have smaller numbers than the nodes above them. */
  private double within(BitSet[] box) {
    double[][] before = new double[box.length][];
    for (int axis = 0; axis < box.length; axis++) {
      before[axis] = before(box[axis], diagrams.size(axis));
    }
    for (int node : nodes) {
      parts[node] = ofNode(node, before[diagrams.axisOf(node)], before);
    }
    return below(diagram, 0, before);
  }

  /** For every cell the part of the axis that a box accepts before it. */
  private static double[] before(BitSet accepted, int size) {
    double[] before = new double[size + 1];
    for (int cell = 0; cell < size; cell++) {
      before[cell + 1] = before[cell] + (accepted.get(cell) ? 1.0 / size : 0);
    }
    return before;
  }

  private double ofNode(int node, double[] own, double[][] before) {
    int axis = diagrams.axisOf(node);
    double sum = 0;
    int from = 0;
    for (int run = 0; run < diagrams.runs(node, axis); run++) {
      int end = diagrams.runEnd(node, axis, run);
      double width = own[end] - own[from];
      sum += width * below(diagrams.runChild(node, axis, run), axis + 1, before);
      from = end;
    }
    return sum;
  }

  private double below(int node, int from, double[][] before) {
    if (node == Diagrams.NONE) {
      return 0;
    }
    double part = node == Diagrams.ALL ? 1 : parts[node];
    for (int axis = from; axis < diagrams.axisOf(node); axis++) {
      part *= before[axis][before[axis].length - 1];
    }
    return part;
  }
}
