package io.faultwright.input;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.io.BufferedReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Cases in a table: a header row with {@code case}, {@code symptom}, {@code expect}, {@code note},
 * {@code origin} and ids of readings and equipment facts, then a row for each case. An empty cell
 * says nothing.
 */
public final class CaseTable {
  private static final Set<String> OWN = Set.of("symptom", "expect", "note", "origin");
  private static final String CASE = "case";

  private final KnowledgeBase kb;
  private final Problems problems;
  private final TableRows rows;
  private final List<Scalar> header;
  private int number = 1;

  /**
   * Begins to read a table.
   *
   * @param path what to call it in messages
   * @param problems to be looked at when there is no next case
   */
  public CaseTable(String path, BufferedReader in, KnowledgeBase kb, Problems problems) {
    this.kb = kb;
    this.problems = problems;
    this.rows = new TableRows(path, in, problems);
    this.header = rows.next().map(TableRows.Row::cells).orElse(List.of());
    if (!header.isEmpty()) {
      checkHeader();
    }
  }

  /**
   * A case as YAML would say it.
   *
   * @param entry the case
   * @param line where its row begins
   * @param lines the text of the row
   */
  public record Item(Entry entry, int line, List<String> lines) {}

  /** The next case; empty at the end, and as soon as there is a problem. */
  public Optional<Item> next() {
    if (!problems.isEmpty()) {
      return Optional.empty();
    }
    return rows.next().map(row -> new Item(entry(row.cells(), ++number), row.line(), row.lines()));
  }

  /** Whether a file with this name, or with this first line, is a table. */
  public static boolean isTable(String path, String firstLine) {
    String name = path.toLowerCase(Locale.ROOT);
    boolean yaml = name.endsWith(".yaml") || name.endsWith(".yml") || name.endsWith(".json");
    return name.endsWith(".csv") || name.endsWith(".tsv") || !yaml && isHeader(firstLine);
  }

  private static boolean isHeader(String line) {
    return line.matches(".*[,;\\t].*") && !line.contains(":") && !line.contains("{");
  }

  private void checkHeader() {
    Set<String> known = new TreeSet<>(kb.readings().keySet());
    known.addAll(kb.equipment().attributes());
    known.addAll(OWN);
    known.add(CASE);
    Set<String> seen = new TreeSet<>();
    for (Scalar column : header) {
      String name = column.text();
      if (!known.contains(name)) {
        problems.add(column.place(), "unknown column `" + name + "`", NearMatch.help(name, known));
      } else if (!seen.add(name)) {
        problems.add(column.place(), "column `" + name + "` stands twice", "keep one of the two");
      }
    }
    if (!seen.contains("symptom") && problems.isEmpty()) {
      problems.add(header.get(0).place(), "there is no column `symptom`", "add it");
    }
  }

  private Entry entry(List<Scalar> row, int number) {
    List<Entry> body = new ArrayList<>();
    List<Entry> given = new ArrayList<>();
    Scalar key = new Scalar("row-" + number, false, row.get(0).place());
    for (int i = 0; i < Math.min(header.size(), row.size()); i++) {
      Scalar cell = row.get(i);
      String column = header.get(i).text();
      if (!cell.text().isBlank() && column.equals(CASE)) {
        key = cell;
      } else if (!cell.text().isBlank()) {
        Scalar name = new Scalar(column, false, cell.place());
        (OWN.contains(column) ? body : given).add(new Entry(name, value(column, cell)));
      }
    }
    body.add(new Entry(new Scalar("given", false, key.place()), new MapNode(given, key.place())));
    return new Entry(key, new MapNode(body, key.place()));
  }

  private static Node value(String column, Scalar cell) {
    return Optional.of(cell)
        .filter(text -> column.equals("expect"))
        .map(Expectation::node)
        .orElse(cell);
  }
}
