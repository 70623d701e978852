package io.faultwright.input;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Cases in a table: a header row with {@code case}, {@code symptom}, {@code expect}, {@code note},
 * {@code origin} and ids of readings and equipment facts, then a row for each case. An empty cell
 * says nothing.
 */
final class CaseTable {
  private static final Set<String> OWN = Set.of("symptom", "expect", "note", "origin");
  private static final String CASE = "case";

  private final KnowledgeBase kb;
  private final Problems problems;
  private final List<List<Scalar>> rows;

  CaseTable(SourceFile file, KnowledgeBase kb, Problems problems) {
    this.kb = kb;
    this.problems = problems;
    this.rows = new Cells(file, problems).rows();
  }

  /** The cases as YAML would say them. */
  List<Entry> entries() {
    if (rows.isEmpty()) {
      return List.of();
    }
    List<Scalar> header = rows.get(0);
    checkHeader(header);
    List<Entry> entries = new ArrayList<>();
    for (int i = 1; i < rows.size(); i++) {
      entries.add(entry(header, rows.get(i), i + 1));
    }
    return entries;
  }

  private void checkHeader(List<Scalar> header) {
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

  private Entry entry(List<Scalar> header, List<Scalar> row, int number) {
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
