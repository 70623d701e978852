package io.faultwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says in words what an import changes. */
public final class ImportText {
  private static final String ARROW = " -> ";
  private static final String NOTHING = "(none)";

  private final TableImport table;
  private final RowWords words;
  private final List<String> lines = new ArrayList<>();
  private int changed;
  private int fresh;
  private int gone;

  private ImportText(TableImport table) {
    this.table = table;
    this.words = new RowWords(table.table());
  }

  /** A part for each table that changes, with every row that is not as it was. */
  public static String write(Imported imported) {
    List<String> parts = new ArrayList<>();
    List<String> same = new ArrayList<>();
    for (TableImport table : imported.tables()) {
      if (table.changesNothing()) {
        same.add(table.table().reading());
      } else {
        parts.add(new ImportText(table).write());
      }
    }
    if (!same.isEmpty()) {
      parts.add("as before: " + String.join(", ", same) + "\n");
    }
    return String.join("\n", parts);
  }

  private String write() {
    lines.add(table.table().reading() + " in " + table.table().file().path());
    table.steps().forEach(this::step);
    table.remarks().forEach(this::remark);
    int same = table.steps().size() - changed - fresh - gone;
    lines.add(
        "  rows: "
            + changed
            + " changed, "
            + fresh
            + " new, "
            + gone
            + " gone, "
            + same
            + " as before");
    return String.join("\n", lines) + "\n";
  }

  private void step(RowStep step) {
    if (step.isNew()) {
      fresh++;
      lines.add("  new      " + row(step.after()));
    } else if (step.isGone()) {
      gone++;
      lines.add("  gone     " + row(step.before()));
    } else {
      changes(step);
    }
  }

  private void changes(RowStep step) {
    List<SheetColumn> columns = step.changed(table.table().columns());
    if (!columns.isEmpty()) {
      changed++;
      lines.add("  changed  " + row(step.before()));
      columns.forEach(column -> lines.add("             " + change(column, step)));
    }
  }

  private String change(SheetColumn column, RowStep step) {
    String after =
        step.after()
            .flatMap(row -> row.cell(column))
            .map(cell -> words.cell(column, cell))
            .orElse(NOTHING);
    return column.id() + ": " + written(column, step.before()) + ARROW + after;
  }

  private static String written(SheetColumn column, Optional<TableRow> row) {
    return row.flatMap(one -> one.cell(column)).map(CellText::of).orElse(NOTHING);
  }

  private String row(Optional<TableRow> row) {
    return row.map(words::flow).orElse("");
  }

  private void remark(Remark remark) {
    String fate = remark.lost() ? "lost" : "kept at a row that changed; does it still hold?";
    lines.add(
        "  comment  " + remark.place().file() + ":" + remark.place().line() + " " + remark.text());
    lines.add("           " + fate);
  }
}
