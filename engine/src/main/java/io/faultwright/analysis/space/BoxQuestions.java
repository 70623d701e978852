package io.faultwright.analysis.space;

import java.util.BitSet;

/** Where diagrams meet boxes, found by looking at each node at most once a question. */
final class BoxQuestions {
  private final NodeTable nodes;
  private final int[] sizes;
  private int[] refuted = {};
  private int question;

  BoxQuestions(NodeTable nodes, int[] sizes) {
    this.nodes = nodes;
    this.sizes = sizes.clone();
  }

  /** Whether a diagram holds a situation whose cells all lie in the box, given a set per axis. */
  boolean meets(int diagram, BitSet[] box) {
    newQuestion();
    return meetsAt(diagram, box);
  }

  /** Every question marks the nodes that need not be looked at again. */
  private void newQuestion() {
    if (refuted.length < nodes.count()) {
      refuted = new int[2 * nodes.count()];
    }
    question++;
  }

  /** Cells of an axis in which a diagram holds a situation whose other cells lie in the box. */
  BitSet reached(int diagram, BitSet[] box, int axis) {
    newQuestion();
    BitSet cells = new BitSet(sizes[axis]);
    reach(diagram, box, axis, cells);
    return cells;
  }

  private void reach(int diagram, BitSet[] box, int axis, BitSet cells) {
    int first = axisOf(diagram);
    if (first > axis) {
      cells.set(0, meetsAt(diagram, box) ? sizes[axis] : 0);
      return;
    }
    if (refuted[diagram] == question) {
      return;
    }
    refuted[diagram] = question;
    int from = 0;
    for (int run = 0; run < nodes.runs(diagram); run++) {
      int end = nodes.runEnd(diagram, run);
      int child = nodes.runChild(diagram, run);
      if (first == axis && meetsAt(child, box)) {
        cells.set(from, end);
      } else if (first < axis
          && box[first].nextSetBit(from) >= 0
          && box[first].nextSetBit(from) < end) {
        reach(child, box, axis, cells);
      }
      from = end;
    }
  }

  private boolean meetsAt(int diagram, BitSet[] box) {
    if (diagram <= Diagrams.ALL) {
      return diagram == Diagrams.ALL;
    }
    if (refuted[diagram] == question) {
      return false;
    }
    int axis = axisOf(diagram);
    int from = 0;
    for (int run = 0; run < nodes.runs(diagram); run++) {
      int first = box[axis].nextSetBit(from);
      from = nodes.runEnd(diagram, run);
      if (first >= 0 && first < from && meetsAt(nodes.runChild(diagram, run), box)) {
        return true;
      }
    }
    refuted[diagram] = question;
    return false;
  }

  private int axisOf(int diagram) {
    return diagram <= Diagrams.ALL ? sizes.length : nodes.axis(diagram);
  }
}
