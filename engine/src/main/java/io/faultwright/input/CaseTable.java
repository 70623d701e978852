package io.faultwright.input;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.input.TableRows.Row;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.ColumnMap;
import io.faultwright.source.Place;
import io.faultwright.source.Sources;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.io.BufferedReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Cases in a table: a header row, then a row for each case. The headings are keys of a case and ids
 * of readings and equipment facts, or what a column map makes of them. An empty cell says nothing.
 */
public final class CaseTable implements CaseInput {
  private static final String CASE = "case";

  private final TableRows rows;
  private final ColumnMap map;
  private final List<Optional<TableColumn>> columns;
  private final List<Problem> notes;
  private int number = 1;

  /**
   * Begins to read a table.
   *
   * @param path what to call it in messages
   * @throws Unreadable where its header row makes no sense
   */
  public CaseTable(String path, BufferedReader in, KnowledgeBase kb, TableUse use) {
    this.map = use.map();
    this.rows = new TableRows(path, in);
    Optional<Row> header = rows.next();
    Problems problems = new Problems();
    header.flatMap(Row::problem).ifPresent(problems::add);
    List<Scalar> headings = header.map(Row::cells).orElse(List.of());
    if (headings.isEmpty()) {
      this.columns = List.of();
      this.notes = List.of();
    } else {
      TableHeader read = TableHeader.of(headings, kb, use, problems);
      this.columns = read.columns();
      this.notes = read.notes();
    }
    if (!problems.isEmpty()) {
      throw new Unreadable(problems.sorted(), excerpt(path, header.get()));
    }
    rows.atMost(columns.size());
  }

  private static Sources excerpt(String path, Row row) {
    SortedMap<Integer, String> lines = new TreeMap<>();
    for (int i = 0; i < row.lines().size(); i++) {
      lines.put(row.line() + i, row.lines().get(i));
    }
    return Sources.excerpt(path, lines);
  }

  @Override
  public List<Problem> notes() {
    return notes;
  }

  @Override
  public Optional<Item> next() {
    return rows.next().map(this::item);
  }

  private Item item(Row row) {
    Problems problems = new Problems();
    row.problem().ifPresent(problems::add);
    number++;
    Optional<Entry> entry =
        row.problem().isEmpty() ? Optional.of(entry(row.cells(), problems)) : Optional.empty();
    beyond(row).ifPresent(problems::add);
    return new Item(
        entry.filter(read -> problems.isEmpty()), row.line(), row.lines(), problems.sorted());
  }

  /** A row with more cells than the header has them in the wrong columns. */
  private Optional<Problem> beyond(Row row) {
    return row.cells().stream()
        .skip(columns.size())
        .filter(cell -> !cell.text().isEmpty())
        .findFirst()
        .map(
            cell ->
                Problem.at(
                    cell.place(),
                    "the row has "
                        + row.cells().size()
                        + " cells, the header has "
                        + columns.size(),
                    "put a cell that has a separator in it in quotes"));
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

  private Entry entry(List<Scalar> row, Problems problems) {
    SortedMap<String, Scalar> said = new TreeMap<>();
    for (int i = 0; i < Math.min(columns.size(), row.size()); i++) {
      Scalar cell = row.get(i);
      columns
          .get(i)
          .ifPresent(
              column ->
                  column
                      .value(cell, map, problems)
                      .ifPresent(value -> said.put(column.is(), value)));
    }
    Place start = row.get(0).place();
    map.always().forEach((is, value) -> said.putIfAbsent(is, at(value.text(), start)));
    return entry(said, start);
  }

  private Entry entry(SortedMap<String, Scalar> said, Place start) {
    List<Entry> body = new ArrayList<>();
    List<Entry> given = new ArrayList<>();
    Scalar key = Optional.ofNullable(said.remove(CASE)).orElse(at("row-" + number, start));
    for (Map.Entry<String, Scalar> one : said.entrySet()) {
      boolean own = ColumnMap.CASE_KEYS.contains(one.getKey());
      Scalar name = at(one.getKey(), one.getValue().place());
      (own ? body : given).add(new Entry(name, value(one.getKey(), one.getValue())));
    }
    body.add(new Entry(at("given", key.place()), new MapNode(given, key.place())));
    return new Entry(key, new MapNode(body, key.place()));
  }

  private static Scalar at(String text, Place place) {
    return new Scalar(text, false, place);
  }

  private static Node value(String column, Scalar cell) {
    return column.equals("expect") ? Expectation.node(cell) : cell;
  }
}
