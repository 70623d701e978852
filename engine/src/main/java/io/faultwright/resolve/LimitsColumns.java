package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.syntax.Node.Scalar;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The columns of a table of limits.
 *
 * @param facts equipment columns, in the written order
 * @param drivers the readings the limits follow, in the written order
 * @param ids every column, in the written order, broken ones included
 * @param sound whether every column is understood
 */
record LimitsColumns(
    List<Scalar> facts, List<Subject.Quantity> drivers, List<String> ids, boolean sound) {
  private static final int MOST_DRIVERS = 2;
  private static final List<String> ROW_WORDS = List.of("low", "high");

  static LimitsColumns of(Fields table, Subjects subjects, Problems problems) {
    int before = problems.count();
    List<Scalar> by = table.oneOrMore("by");
    Map<String, Scalar> columns = new LinkedHashMap<>();
    by.forEach(column -> add(column, columns, problems));
    Map<String, Scalar> facts = new LinkedHashMap<>();
    Map<Scalar, Subject.Quantity> drivers = new LinkedHashMap<>();
    for (Scalar column : columns.values()) {
      subjects.find(column).ifPresent(subject -> sort(column, subject, facts, drivers, problems));
    }
    if (drivers.size() > MOST_DRIVERS) {
      tooMany(List.copyOf(drivers.keySet()), problems);
    }
    return new LimitsColumns(
        List.copyOf(facts.values()),
        drivers.values().stream().limit(MOST_DRIVERS).toList(),
        List.copyOf(columns.keySet()),
        problems.count() == before && facts.size() + drivers.size() == by.size());
  }

  /** The measured reading a subject is, if it is one. */
  static Optional<Subject.Quantity> quantity(Subject subject) {
    return subject instanceof Subject.Quantity quantity ? Optional.of(quantity) : Optional.empty();
  }

  private static void add(Scalar column, Map<String, Scalar> columns, Problems problems) {
    if (ROW_WORDS.contains(column.text())) {
      problems.add(
          column.place(),
          "`" + column.text() + "` is a word of the table and cannot be a column",
          "give the reading or option another id");
    } else if (columns.putIfAbsent(column.text(), column) != null) {
      problems.add(
          new Problem(
              List.of(column.place(), columns.get(column.text()).place()),
              "the column " + Words.quoted(column.text()) + " is named twice",
              "remove one of the two"));
    }
  }

  private static void sort(
      Scalar column,
      Subject subject,
      Map<String, Scalar> facts,
      Map<Scalar, Subject.Quantity> drivers,
      Problems problems) {
    if (subject instanceof Subject.Quantity quantity) {
      drivers.put(column, quantity);
    } else if (!subject.reading()) {
      facts.put(column.text(), column);
    } else {
      problems.add(
          column.place(),
          Words.quoted(column.text()) + " is a choice; limits cannot follow it",
          "limits follow facts of the equipment and at most two measured readings");
    }
  }

  private static void tooMany(List<Scalar> drivers, Problems problems) {
    problems.add(
        new Problem(
            drivers.stream().skip(MOST_DRIVERS).map(Scalar::place).toList(),
            "limits follow at most two measured readings, found "
                + Words.quoted(drivers.stream().map(Scalar::text).toList()),
            "keep two of them; for the others write a row for each case of the equipment"));
  }
}
