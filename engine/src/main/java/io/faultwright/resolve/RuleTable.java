package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Condition;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads rules written as a table: a header of subjects, and one row for each rule. */
final class RuleTable {
  private static final String ANY = "any";
  private static final String RULE = "rule";
  private static final String WHEN = "when";

  private final ConditionResolver situation;
  private final Problems problems;

  RuleTable(Context context, ConditionResolver situation) {
    this.situation = situation;
    this.problems = context.problems();
  }

  List<RuleDraft> drafts(Definition symptom, Node table) {
    Fields fields =
        new Fields(
            table,
            "the table of " + symptom.what(),
            table.place(),
            List.of("columns", "rows"),
            problems);
    fields.require("columns");
    fields.require("rows");
    List<Scalar> columns = fields.oneOrMore("columns");
    checkRepeats(columns);
    return fields.list("rows").stream().flatMap(row -> draft(columns, row).stream()).toList();
  }

  private void checkRepeats(List<Scalar> columns) {
    Map<String, Scalar> seen = new LinkedHashMap<>();
    for (Scalar column : columns) {
      Scalar earlier = seen.putIfAbsent(column.text(), column);
      if (earlier != null) {
        problems.add(
            new Problem(
                List.of(column.place(), earlier.place()),
                "the column " + Words.quoted(column.text()) + " stands twice",
                "remove one of the two"));
      }
    }
  }

  private Optional<RuleDraft> draft(List<Scalar> columns, Node row) {
    Fields fields = new Fields(row, "the row", row.place(), RulesResolver.keys(RULE), problems);
    fields.require(WHEN);
    Condition when = new Condition.All(cells(columns, fields));
    return fields
        .requireScalar(RULE)
        .map(
            id ->
                new RuleDraft(
                    Definition.of(Kind.RULE, new Entry(id, row)), row.place(), fields, when));
  }

  private List<Condition> cells(List<Scalar> columns, Fields fields) {
    List<Node> cells = fields.list(WHEN);
    if (fields.has(WHEN) && cells.size() != columns.size() && !columns.isEmpty()) {
      reportCount(columns, cells, fields);
    }
    List<Condition> tests = new ArrayList<>();
    for (int i = 0; i < Math.min(cells.size(), columns.size()); i++) {
      cell(columns.get(i), cells.get(i)).ifPresent(tests::add);
    }
    return tests;
  }

  private void reportCount(List<Scalar> columns, List<Node> cells, Fields fields) {
    if (fields.find(WHEN).filter(ListNode.class::isInstance).isPresent()) {
      problems.add(
          fields.place(WHEN),
          "the row has " + cells.size() + " cells, but the table " + columns.size() + " columns",
          "write one cell for each column, and `any` where it does not matter");
    }
  }

  private Optional<Condition> cell(Scalar column, Node cell) {
    boolean any = cell instanceof Scalar scalar && scalar.text().strip().equals(ANY);
    return any ? Optional.empty() : situation.cell(column, cell);
  }
}
