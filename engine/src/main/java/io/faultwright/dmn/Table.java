package io.faultwright.dmn;

import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A decision table of which at most one row holds.
 *
 * @param inputs the columns that are looked at
 * @param outputs the columns that are told
 * @param rows in the order they are printed, which means nothing
 */
record Table(List<Input> inputs, List<Output> outputs, List<Row> rows) {
  Table {
    inputs = List.copyOf(inputs);
    outputs = List.copyOf(outputs);
    rows = List.copyOf(rows);
  }

  /** Every word of its expressions, names among them. */
  SortedSet<String> names() {
    Stream<String> expressions =
        Stream.concat(
            inputs.stream().map(Input::expression),
            rows.stream().flatMap(row -> row.results().stream()));
    return expressions
        .flatMap(expression -> Arrays.stream(expression.split("\\W+")))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * A column that is looked at.
   *
   * @param label for people
   * @param expression FEEL
   * @param type of the expression
   */
  record Input(String label, String expression, String type) {}

  /**
   * A column that is told.
   *
   * @param name empty where it is the only one
   * @param type of it
   * @param otherwise FEEL: what is told where no row holds
   */
  record Output(String name, String type, String otherwise) {}

  /**
   * A row.
   *
   * @param tests a unary test for each input
   * @param results an expression for each output
   */
  record Row(List<String> tests, List<String> results) {
    Row {
      tests = List.copyOf(tests);
      results = List.copyOf(results);
    }
  }
}
