package io.faultwright.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds which rows of a sheet are which rows of the file: first those that are about the same, then
 * those that took the place of a row that is gone and share a figure with it.
 */
final class RowPlan {
  private final List<SheetColumn> columns;
  private final List<TableRow> old;
  private final List<TableRow> fresh;
  private final Map<Integer, Integer> freshOf = new HashMap<>();
  private final Map<Integer, Integer> oldOf = new HashMap<>();

  private RowPlan(WrittenTable table, List<TableRow> fresh) {
    this.columns = table.columns();
    this.old = table.rows();
    this.fresh = fresh;
  }

  /** A step for every row of the file and of the sheet, in the order they are to stand. */
  static List<RowStep> of(WrittenTable table, List<TableRow> fresh) {
    RowPlan plan = new RowPlan(table, fresh);
    plan.pairSame();
    plan.pairReplaced();
    return plan.steps();
  }

  private void pairSame() {
    Map<List<Optional<Object>>, Deque<Integer>> about = new HashMap<>();
    for (int i = 0; i < old.size(); i++) {
      about.computeIfAbsent(old.get(i).about(columns), key -> new ArrayDeque<>()).add(i);
    }
    for (int i = 0; i < fresh.size(); i++) {
      Deque<Integer> same = about.get(fresh.get(i).about(columns));
      if (same != null && !same.isEmpty()) {
        pair(same.remove(), i);
      }
    }
  }

  private void pairReplaced() {
    int anchor = -1;
    for (int i = 0; i < fresh.size(); i++) {
      int next = anchor + 1;
      boolean free = !oldOf.containsKey(i) && next < old.size() && !freshOf.containsKey(next);
      if (free && sharesFigure(old.get(next), fresh.get(i))) {
        pair(next, i);
      }
      anchor = oldOf.getOrDefault(i, anchor);
    }
  }

  private boolean sharesFigure(TableRow one, TableRow other) {
    return columns.stream()
        .anyMatch(
            column ->
                one.meaning(column).isPresent()
                    && one.meaning(column).equals(other.meaning(column)));
  }

  private void pair(int inFile, int inSheet) {
    freshOf.put(inFile, inSheet);
    oldOf.put(inSheet, inFile);
  }

  private List<RowStep> steps() {
    List<RowStep> steps = new ArrayList<>();
    for (int i = 0; i < old.size(); i++) {
      Optional<TableRow> after = Optional.ofNullable(freshOf.get(i)).map(fresh::get);
      steps.add(new RowStep(i, Optional.of(old.get(i)), after));
    }
    int anchor = -1;
    for (int i = 0; i < fresh.size(); i++) {
      anchor = oldOf.getOrDefault(i, anchor);
      if (!oldOf.containsKey(i)) {
        steps.add(new RowStep(anchor, Optional.empty(), Optional.of(fresh.get(i))));
      }
    }
    steps.sort(Comparator.comparingInt(RowStep::index));
    return steps;
  }
}
