package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Between;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads the section {@code limits}. */
final class LimitsResolver {
  private static final List<String> KEYS = List.of("by", "between", "rows");
  private static final List<String> BETWEEN_WORDS =
      Arrays.stream(Between.values()).map(way -> way.name().toLowerCase(Locale.ROOT)).toList();

  private final Context context;
  private final Subjects subjects;
  private final Problems problems;

  LimitsResolver(Context context, Subjects subjects) {
    this.context = context;
    this.subjects = subjects;
    this.problems = context.problems();
  }

  SortedMap<String, LimitsTable> resolveAll() {
    SortedMap<String, LimitsTable> tables = new TreeMap<>();
    context.outline().of(Kind.LIMITS).forEach((id, one) -> tables.put(id, resolve(one)));
    SortedMap<String, SortedSet<String>> drivers = new TreeMap<>();
    tables.forEach((id, table) -> drivers.put(id, new TreeSet<>(table.drivers())));
    Cycles.of(drivers).forEach(cycle -> reportCycle(cycle, tables));
    return tables;
  }

  /** A single table; circles through other tables are not looked for. */
  LimitsTable resolve(Definition definition) {
    Optional<Subject.Quantity> judged = judged(definition);
    Fields fields = Fields.of(definition, KEYS, problems);
    LimitsColumns columns = LimitsColumns.of(fields, subjects, problems);
    Optional<Between> between = between(fields, columns);
    fields.require("rows");
    LimitsRowResolver rows = new LimitsRowResolver(context, subjects, judged, columns, between);
    return new LimitsTable(
        definition.id(),
        definition.place(),
        columns.ids(),
        columns.drivers().stream().map(Subject.Quantity::id).toList(),
        between,
        fields.list("rows").stream().map(rows::resolve).toList());
  }

  private Optional<Subject.Quantity> judged(Definition definition) {
    context.names().reference(Kind.READING, definition.key());
    if (!context.names().known(Kind.READING, definition.id())) {
      return Optional.empty();
    }
    Optional<Subject> subject = subjects.find(definition.key());
    if (subject.isPresent() && !(subject.get() instanceof Subject.Quantity)) {
      problems.add(
          definition.place(),
          Words.quoted(definition.id()) + " is a choice; only measured readings have limits",
          "say what is no complaint with `normal:` at the reading");
    }
    return subject.flatMap(LimitsColumns::quantity);
  }

  private Optional<Between> between(Fields fields, LimitsColumns columns) {
    if (!columns.drivers().isEmpty()) {
      return fields.require("between").isPresent()
          ? fields.scalar("between").flatMap(this::way)
          : Optional.empty();
    }
    if (fields.has("between") && columns.sound()) {
      problems.add(
          fields.place("between"),
          "`between` without a measured reading in `by`",
          "remove it, or name the reading that the limits follow in `by`");
    }
    return Optional.empty();
  }

  private Optional<Between> way(Scalar written) {
    String word = written.text().strip();
    if (BETWEEN_WORDS.contains(word)) {
      return Optional.of(Between.valueOf(word.toUpperCase(Locale.ROOT)));
    }
    problems.add(
        written.place(),
        "unknown way " + Words.quoted(word) + " between rows",
        NearMatch.help(word, BETWEEN_WORDS));
    return Optional.empty();
  }

  private void reportCycle(List<String> cycle, SortedMap<String, LimitsTable> tables) {
    List<Place> places = new ArrayList<>();
    cycle.subList(0, cycle.size() - 1).forEach(id -> places.add(tables.get(id).place()));
    problems.add(
        new Problem(
            places,
            "limits go round in a circle: `" + String.join("` follows `", cycle) + "`",
            "let one of these tables follow equipment or another reading"));
  }
}
