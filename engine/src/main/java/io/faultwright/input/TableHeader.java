package io.faultwright.input;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.quantity.Unit;
import io.faultwright.resolve.ColumnMap;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the columns of a table are, by its header row. */
final class TableHeader {
  private static final Collector<String, ?, TreeSet<String>> SORTED =
      Collectors.toCollection(TreeSet::new);

  private final KnowledgeBase kb;
  private final TableUse use;
  private final Problems problems;
  private final SortedSet<String> ids = new TreeSet<>();
  private final Map<String, Scalar> seen = new HashMap<>();
  private final List<Optional<TableColumn>> columns = new ArrayList<>();
  private final List<Problem> notes = new ArrayList<>();

  private TableHeader(KnowledgeBase kb, TableUse use, Problems problems) {
    this.kb = kb;
    this.use = use;
    this.problems = problems;
    ids.addAll(kb.readings().keySet());
    ids.addAll(kb.equipment().attributes());
    ids.addAll(ColumnMap.CASE_KEYS);
  }

  /** Reads a header row that has at least one cell. */
  static TableHeader of(List<Scalar> header, KnowledgeBase kb, TableUse use, Problems problems) {
    TableHeader read = new TableHeader(kb, use, problems);
    header.forEach(heading -> read.columns.add(read.column(heading)));
    read.requireSymptom(header);
    read.noteMissing(header);
    return read;
  }

  /** Each column, in order; empty where it is left out. */
  List<Optional<TableColumn>> columns() {
    return columns;
  }

  /** Columns that are left out, and columns of the map that are not there. */
  List<Problem> notes() {
    return notes;
  }

  private Optional<TableColumn> column(Scalar heading) {
    String name = heading.text();
    if (use.map().ignored().contains(name)) {
      return Optional.empty();
    }
    ColumnMap.Column mapped = use.map().columns().get(name);
    if (mapped != null) {
      return taken(mapped.is(), heading).map(is -> column(is, mapped.unit(), mapped.words()));
    }
    if (!ids.contains(name)) {
      unknown(heading);
      return Optional.empty();
    }
    SortedMap<String, String> none = new TreeMap<>();
    return taken(name, heading).map(is -> column(is, Optional.empty(), none));
  }

  private TableColumn column(String is, Optional<Unit> unit, SortedMap<String, String> words) {
    return new TableColumn(is, isMeasured(is), unit, words, values(is));
  }

  /** What can be said of a choice or a fault; nothing where that is not listed. */
  private SortedSet<String> values(String is) {
    return switch (is) {
      case "symptom" -> kb.symptoms().keySet().stream().collect(SORTED);
      case "expect" ->
          Stream.concat(kb.faults().keySet().stream(), Stream.of("escalate", "nothing yet"))
              .collect(SORTED);
      default ->
          Optional.ofNullable(kb.readings().get(is)).stream()
              .flatMap(reading -> reading.domain().match(none -> Stream.of(), TableHeader::words))
              .collect(SORTED);
    };
  }

  private static Stream<String> words(Domain.Choice choice) {
    return Stream.concat(choice.ids().stream(), Stream.of("cannot be taken"));
  }

  private Optional<String> taken(String is, Scalar heading) {
    Scalar first = seen.putIfAbsent(is, heading);
    if (first == null) {
      return Optional.of(is);
    }
    String message =
        first.text().equals(heading.text())
            ? "column `" + heading.text() + "` stands twice"
            : "columns `" + first.text() + "` and `" + heading.text() + "` are both `" + is + "`";
    problems.add(
        new Problem(List.of(heading.place(), first.place()), message, "keep one of the two"));
    return Optional.empty();
  }

  private boolean isMeasured(String id) {
    return Optional.ofNullable(kb.readings().get(id))
        .map(Reading::domain)
        .filter(Domain.Measured.class::isInstance)
        .isPresent();
  }

  /** A column that nobody explained is left out of a foreign table; elsewhere it is a mistake. */
  private void unknown(Scalar heading) {
    SortedSet<String> known = new TreeSet<>(ids);
    known.addAll(use.map().columns().keySet());
    String help = "say in a column map what it is, or put it under `ignore` there";
    if (!use.foreign()) {
      problems.add(
          heading.place(),
          "unknown column `" + heading.text() + "`",
          near(heading.text(), known).orElse(help));
    } else if (!heading.text().isEmpty()) {
      notes.add(
          Problem.at(
              heading.place(),
              "unknown column `" + heading.text() + "` is left out",
              near(heading.text(), known).orElse(help)));
    }
  }

  private static Optional<String> near(String name, SortedSet<String> known) {
    return NearMatch.of(name, known).map(match -> "did you mean `" + match + "`?");
  }

  private void requireSymptom(List<Scalar> header) {
    boolean fixed = use.map().always().containsKey("symptom");
    if (seen.containsKey("symptom") || fixed || !problems.isEmpty()) {
      return;
    }
    Optional<String> meant =
        use.map().columns().values().stream()
            .filter(column -> column.is().equals("symptom"))
            .map(column -> column.heading().text())
            .findFirst();
    problems.add(
        header.get(0).place(),
        "there is no column `" + meant.orElse("symptom") + "`",
        meant
            .flatMap(heading -> near(heading, headings(header)))
            .orElse(
                use.foreign()
                    ? "map a column to it, or write `always: { symptom: … }` in the column map"
                    : "add it"));
  }

  private static SortedSet<String> headings(List<Scalar> header) {
    return header.stream().map(Scalar::text).collect(SORTED);
  }

  private void noteMissing(List<Scalar> header) {
    SortedSet<String> headings = headings(header);
    use.map().columns().values().stream()
        .filter(column -> !headings.contains(column.heading().text().strip()))
        .map(
            column ->
                Problem.at(
                    column.heading().place(),
                    "the table has no column `" + column.heading().text() + "`",
                    near(column.heading().text(), headings).orElse("")))
        .forEach(notes::add);
  }
}
