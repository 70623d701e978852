package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Condition;
import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads the rows of one table of limits. */
final class LimitsRowResolver {
  private static final String LOW = "low";
  private static final String HIGH = "high";

  private final Optional<Subject.Quantity> judged;
  private final LimitsColumns columns;
  private final Optional<Between> between;
  private final ConditionResolver equipment;
  private final QuantityPatterns quantities;
  private final Problems problems;

  LimitsRowResolver(
      Context context,
      Subjects subjects,
      Optional<Subject.Quantity> judged,
      LimitsColumns columns,
      Optional<Between> between) {
    this.judged = judged;
    this.columns = columns;
    this.between = between;
    this.equipment = ConditionResolver.ofEquipment(context, subjects);
    this.problems = context.problems();
    this.quantities = new QuantityPatterns(context.quantities(), problems);
  }

  Row resolve(Node node) {
    Fields fields = new Fields(node, "the row", node.place(), keys(node), problems);
    Optional<BigFraction> low = end(fields, LOW);
    Optional<BigFraction> high = end(fields, HIGH);
    checkEnds(fields, node.place(), low, high);
    return new Row(node.place(), builds(fields), at(fields), low, high);
  }

  /** Columns and ends; anything else too where a column is not understood. */
  private List<String> keys(Node row) {
    List<String> keys = new ArrayList<>(columns.ids());
    keys.addAll(List.of(LOW, HIGH));
    if (!columns.sound() && row instanceof MapNode map) {
      map.entries().forEach(entry -> keys.add(entry.name()));
    }
    return keys;
  }

  private Optional<BigFraction> end(Fields fields, String key) {
    Optional<Scalar> written = fields.scalar(key);
    return judged.flatMap(
        reading -> written.flatMap(text -> quantities.amount(text.place(), text.text(), reading)));
  }

  private void checkEnds(
      Fields fields, Place row, Optional<BigFraction> low, Optional<BigFraction> high) {
    if (fields.readable() && !fields.mentions(LOW) && !fields.mentions(HIGH)) {
      problems.add(row, "the row has neither `low` nor `high`", "write at least one of the two");
    }
    if (low.isPresent() && high.isPresent() && low.get().compareTo(high.get()) > 0) {
      problems.add(
          fields.place(LOW),
          "`low` ("
              + Decimals.show(low.get())
              + ") is greater than `high` ("
              + Decimals.show(high.get())
              + ")",
          "exchange the two numbers");
    }
  }

  private Condition builds(Fields fields) {
    List<Condition> tests = new ArrayList<>();
    for (Scalar fact : columns.facts()) {
      fields.find(fact.text()).flatMap(cell -> equipment.cell(fact, cell)).ifPresent(tests::add);
    }
    return new Condition.All(tests);
  }

  private List<Interval> at(Fields fields) {
    return columns.drivers().stream().flatMap(driver -> at(fields, driver).stream()).toList();
  }

  private Optional<Interval> at(Fields fields, Subject.Quantity driver) {
    Optional<Scalar> cell = fields.require(driver.id()).flatMap(node -> fields.scalar(driver.id()));
    return cell.flatMap(
        written ->
            between.flatMap(
                way ->
                    way == Between.INTERPOLATE
                        ? point(written, driver)
                        : stretch(written, driver)));
  }

  private Optional<Interval> point(Scalar written, Subject.Quantity driver) {
    if (QuantityParser.isStretch(written.text())) {
      problems.add(
          written.place(),
          "rows to interpolate between stand at one value, found the stretch "
              + Words.quoted(written.text()),
          "write one value, or `between: step`");
      return Optional.empty();
    }
    return quantities.amount(written.place(), written.text(), driver).map(Interval::point);
  }

  private Optional<Interval> stretch(Scalar written, Subject.Quantity driver) {
    if (!QuantityParser.isStretch(written.text())) {
      problems.add(
          written.place(),
          "rows of a stepped table hold over a stretch, found " + Words.quoted(written.text()),
          "write the stretch as in `10 to 20`, or `between: interpolate`");
      return Optional.empty();
    }
    Optional<Interval> stretch = quantities.stretch(written.place(), written.text(), driver);
    if (stretch.isPresent() && stretch.get().low().equals(stretch.get().high())) {
      problems.add(written.place(), "the stretch has one value only", "write two different ends");
    }
    return stretch;
  }
}
