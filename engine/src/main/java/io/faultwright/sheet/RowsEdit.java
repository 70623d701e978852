package io.faultwright.sheet;

import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Scalar;
import io.faultwright.syntax.Splices;
import io.faultwright.syntax.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Carries out what becomes of the rows of a table, in the text of its file. */
final class RowsEdit {
  private final WrittenTable table;
  private final List<RowStep> steps;
  private final RowsText text;
  private final RowWords words;
  private final Splices splices;
  private final List<Remark> remarks = new ArrayList<>();

  /**
   * What comes of it.
   *
   * @param raw the text of the file, byte for byte as before outside the rows
   * @param remarks comments that are lost, or stand at a row that changed
   */
  record Result(String raw, List<Remark> remarks) {}

  private RowsEdit(WrittenTable table, List<RowStep> steps, String raw) {
    this.table = table;
    this.steps = steps;
    this.text = new RowsText(table.file(), table.reading());
    this.words = new RowWords(table);
    this.splices = new Splices(raw);
  }

  static Result of(WrittenTable table, List<RowStep> steps, String raw) {
    RowsEdit edit = new RowsEdit(table, steps, raw);
    edit.carryOut();
    return new Result(edit.splices.apply(), edit.remarks);
  }

  private void carryOut() {
    boolean sameRows = steps.stream().noneMatch(step -> step.isNew() || step.isGone());
    if (sameRows || text.isBlock()) {
      steps.forEach(this::carryOut);
    } else {
      rewrite();
    }
  }

  private void carryOut(RowStep step) {
    if (step.isNew()) {
      add(step);
    } else if (step.isGone()) {
      remove(step.index());
    } else {
      change(step);
    }
  }

  private void add(RowStep step) {
    TableRow row = step.after().orElseThrow();
    String hyphen = text.hyphenIndentation();
    String written =
        text.row(0).flow() ? words.flow(row) : words.block(row, " ".repeat(hyphen.length() + 2));
    int at = step.index() < 0 ? text.leadingStart(0) : text.lineAfter(step.index());
    boolean open = at == text.length() && !text.endsWithLineFeed();
    String line = hyphen + "- " + written;
    splices.insert(at, open ? "\n" + line : line + "\n");
  }

  private void remove(int index) {
    int start = text.leadingStart(index);
    int end = text.lineAfter(index);
    remarks.addAll(text.comments(start, end, true));
    splices.replace(start, end, "");
  }

  private void change(RowStep step) {
    List<SheetColumn> changed = step.changed(table.columns());
    if (changed.isEmpty()) {
      return;
    }
    Written row = text.row(step.index());
    boolean inPlace = changed.stream().allMatch(column -> isText(step, column));
    if (inPlace) {
      changed.forEach(column -> change(row, column, step.after().orElseThrow()));
    } else {
      splices.replace(row.start(), row.end(), words.flow(merged(step, changed)));
      remarks.addAll(text.comments(row.start(), row.end(), true));
    }
    remarks.addAll(beside(step.index(), row, inPlace));
  }

  /** Comments that stay at a row that changed. */
  private List<Remark> beside(int index, Written row, boolean inPlace) {
    List<Remark> found = new ArrayList<>();
    if (text.isBlock()) {
      found.addAll(text.comments(text.leadingStart(index), row.start(), false));
      found.addAll(text.comments(row.end(), text.lineAfter(index), false));
    }
    if (inPlace) {
      found.addAll(text.comments(row.start(), row.end(), false));
    }
    return found;
  }

  private static boolean isText(RowStep step, SheetColumn column) {
    return isText(step.before(), column) && isText(step.after(), column);
  }

  private static boolean isText(Optional<TableRow> row, SheetColumn column) {
    return row.flatMap(one -> one.cell(column)).filter(Scalar.class::isInstance).isPresent();
  }

  private void change(Written row, SheetColumn column, TableRow after) {
    Written cell = row.find(column.id()).orElseThrow();
    Node fresh = after.cell(column).orElseThrow();
    splices.replace(cell.start(), cell.end(), words.cell(column, fresh));
  }

  /** The row with its new cells, and the others as the trainer wrote them. */
  private static TableRow merged(RowStep step, List<SheetColumn> changed) {
    TableRow before = step.before().orElseThrow();
    TableRow after = step.after().orElseThrow();
    Map<String, Node> cells = new TreeMap<>(before.cells());
    for (SheetColumn column : changed) {
      cells.remove(column.id());
      after.cell(column).ifPresent(cell -> cells.put(column.id(), cell));
    }
    return new TableRow(cells, before.place());
  }

  /** Rows in brackets are written anew as a whole. */
  private void rewrite() {
    Written all = text.all();
    List<String> rows = steps.stream().filter(step -> !step.isGone()).map(this::whole).toList();
    remarks.addAll(text.comments(all.start(), all.end(), true));
    if (text.isTableInBraces()) {
      splices.replace(
          all.start(), all.end(), rows.stream().collect(Collectors.joining(", ", "[", "]")));
    } else {
      String line = "\n" + " ".repeat(text.indentation() + 2) + "- ";
      splices.replace(text.blanksBefore(all.start()), all.end(), line + String.join(line, rows));
    }
  }

  private String whole(RowStep step) {
    return words.flow(
        step.isNew() ? step.after().orElseThrow() : merged(step, step.changed(table.columns())));
  }
}
