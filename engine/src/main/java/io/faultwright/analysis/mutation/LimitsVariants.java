package io.faultwright.analysis.mutation;

import io.faultwright.adequacy.Mutant.Operator;
import io.faultwright.analysis.coverage.Threshold;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.model.Value;
import io.faultwright.wording.RuleText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Mistakes in a table of limits: a limit of one row that lies a step off. */
final class LimitsVariants {
  private final LimitsTable table;
  private final BigFraction step;
  private final RuleText text;

  LimitsVariants(KnowledgeBase kb, LimitsTable table) {
    this.table = table;
    this.step = Threshold.step(kb.readings().get(table.reading()));
    this.text = new RuleText(kb);
  }

  /** The table with one limit moved each. */
  List<Variant<LimitsTable>> all() {
    List<Variant<LimitsTable>> variants = new ArrayList<>();
    for (int i = 0; i < table.rows().size(); i++) {
      for (BigFraction by : List.of(step, step.negate())) {
        low(i, by).ifPresent(variants::add);
        high(i, by).ifPresent(variants::add);
      }
    }
    return variants;
  }

  private Optional<Variant<LimitsTable>> low(int at, BigFraction by) {
    Row row = table.rows().get(at);
    return row.low()
        .map(low -> low.add(by))
        .filter(low -> row.high().filter(high -> low.compareTo(high) > 0).isEmpty())
        .map(
            low ->
                with(
                    at,
                    new Row(row.place(), row.builds(), row.at(), Optional.of(low), row.high()),
                    "low",
                    row.low().orElseThrow(),
                    low));
  }

  private Optional<Variant<LimitsTable>> high(int at, BigFraction by) {
    Row row = table.rows().get(at);
    return row.high()
        .map(high -> high.add(by))
        .filter(high -> row.low().filter(low -> low.compareTo(high) > 0).isEmpty())
        .map(
            high ->
                with(
                    at,
                    new Row(row.place(), row.builds(), row.at(), row.low(), Optional.of(high)),
                    "high",
                    row.high().orElseThrow(),
                    high));
  }

  private Variant<LimitsTable> with(int at, Row row, String end, BigFraction was, BigFraction is) {
    List<Row> rows = new ArrayList<>(table.rows());
    rows.set(at, row);
    LimitsTable changed =
        new LimitsTable(
            table.reading(), table.place(), table.by(), table.drivers(), table.between(), rows);
    String words =
        end + " limit of `" + table.reading() + "`, " + amount(was) + ", made " + amount(is);
    return new Variant<>(changed, Operator.LIMIT_MOVED, words, row.place());
  }

  private String amount(BigFraction value) {
    return text.value(table.reading(), new Value.Number(value));
  }
}
