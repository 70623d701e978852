package io.faultwright.dmn;

import io.faultwright.analysis.space.Diagrams;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The rows of a table that hold exactly the cells of a diagram: one for each way through it, so
 * that no two of them can hold at once.
 */
final class Rows {
  private final Diagrams diagrams;
  private final List<List<BitSet>> rows = new ArrayList<>();
  private final BitSet[] row;

  private final int most;

  private Rows(Diagrams diagrams, int most) {
    this.diagrams = diagrams;
    this.most = most;
    this.row = new BitSet[diagrams.axes()];
  }

  /**
   * For each row the accepted classes of every column.
   *
   * @param most rows after which there are no more
   */
  static List<List<BitSet>> of(Diagrams diagrams, int diagram, int most) {
    Rows rows = new Rows(diagrams, most);
    rows.walk(diagram, 0);
    return rows.rows;
  }

  private void walk(int diagram, int axis) {
    if (diagram == Diagrams.NONE || rows.size() >= most) {
      return;
    }
    if (axis == row.length) {
      rows.add(List.of(row.clone()));
      return;
    }
    Map<Integer, BitSet> ways = new LinkedHashMap<>();
    for (int cell = 0; cell < diagrams.size(axis); cell++) {
      int child = diagrams.child(diagram, axis, cell);
      ways.computeIfAbsent(child, key -> new BitSet()).set(cell);
    }
    ways.forEach(
        (child, cells) -> {
          row[axis] = cells;
          walk(child, axis + 1);
        });
  }
}
