package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Domain;
import io.faultwright.model.NamedValue;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads which values a reading can have. */
final class DomainResolver {
  /** Stands in for a domain that could not be read. */
  static final Domain.Choice STAND_IN = new Domain.Choice(List.of(), false);

  private static final Domain.Choice YES_NO =
      new Domain.Choice(List.of(new NamedValue("yes", "Yes"), new NamedValue("no", "No")), true);

  private final Context context;
  private final Problems problems;

  DomainResolver(Context context) {
    this.context = context;
    this.problems = context.problems();
  }

  /** The domain; empty where it could not be read. */
  Optional<Domain> resolve(Definition definition, Fields fields) {
    boolean measured = fields.has("unit") || fields.has("range") || fields.has("resolution");
    if (measured && fields.has("values")) {
      problems.add(
          new Problem(
              List.of(fields.place("values"), fields.place(fields.has("unit") ? "unit" : "range")),
              definition.what() + " is measured and a choice at once",
              "keep `unit` and `range`, or keep `values`"));
      return Optional.empty();
    }
    if (measured) {
      return measured(definition, fields);
    }
    return choice(definition, fields);
  }

  private Optional<Domain> measured(Definition definition, Fields fields) {
    Optional<Unit> unit =
        fields
            .requireScalar("unit")
            .flatMap(written -> context.quantities().unit(written.place(), written.text().strip()));
    Optional<Scalar> range = fields.requireScalar("range");
    if (unit.isEmpty() || range.isEmpty()) {
      return Optional.empty();
    }
    Optional<BigFraction> resolution =
        fields.scalar("resolution").flatMap(written -> resolution(written, unit.get()));
    return range(definition, range.get(), unit.get())
        .map(interval -> new Domain.Measured(unit.get(), interval, resolution));
  }

  private Optional<Interval> range(Definition definition, Scalar written, Unit unit) {
    Optional<Interval> range =
        context.quantities().stretch(written.place(), written.text(), unit, definition.what());
    if (range.isPresent() && range.get().low().equals(range.get().high())) {
      problems.add(written.place(), "the range has one value only", "write two different ends");
      return Optional.empty();
    }
    return range;
  }

  /** The smallest step, in the unit's differences. */
  Optional<BigFraction> resolution(Scalar written, Unit unit) {
    String text = written.text().strip();
    boolean ownUnit = text.endsWith(unit.symbol());
    String number = ownUnit ? text.substring(0, text.length() - unit.symbol().length()) : text;
    Optional<BigFraction> step =
        context
            .quantities()
            .number(written.place(), number, Units.ofDifferences(unit), "`resolution`");
    if (step.isPresent() && step.get().signum() <= 0) {
      problems.add(
          written.place(),
          "the resolution must be greater than zero",
          "write the smallest step the instrument shows");
      return Optional.empty();
    }
    return step;
  }

  private Optional<Domain> choice(Definition definition, Fields fields) {
    if (!fields.has("values")) {
      missing(definition, fields);
      return Optional.empty();
    }
    return fields.find("values").flatMap(node -> choice(definition, node));
  }

  private void missing(Definition definition, Fields fields) {
    boolean said = List.of("values", "unit", "range").stream().anyMatch(fields::mentions);
    if (fields.readable() && !said) {
      problems.add(
          definition.place(),
          definition.what() + " has neither `unit` and `range` nor `values`",
          "say what it can be: `unit:` with `range:`, `values:` with a list, or `values: yes/no`");
    }
  }

  private Optional<Domain> choice(Definition definition, Node values) {
    if (values instanceof Scalar word) {
      return yesNo(word);
    }
    Map<String, NamedValue> named = new LinkedHashMap<>();
    if (values instanceof ListNode list) {
      list.items().forEach(item -> item(item, named));
    } else if (values instanceof MapNode map) {
      map.entries().forEach(entry -> add(entry.key(), title(entry), named));
    }
    return atLeastTwo(definition, values.place(), List.copyOf(named.values()));
  }

  private Optional<Domain> yesNo(Scalar word) {
    if (word.text().strip().equals("yes/no")) {
      return Optional.of(YES_NO);
    }
    problems.add(
        word.place(),
        "`values` takes a map, a list or `yes/no`, found " + Words.quoted(word.text()),
        "write `values: yes/no`, or `values: [one, two]`");
    return Optional.empty();
  }

  private void item(Node item, Map<String, NamedValue> named) {
    if (item instanceof Scalar scalar && !scalar.text().isBlank()) {
      add(scalar, Words.title(scalar.text()), named);
    } else {
      problems.add(
          item.place(),
          "a list of values has ids only, found " + item.kind(),
          "write `values: [one, two]`, or a map of ids and titles");
    }
  }

  private String title(Entry entry) {
    if (entry.value() instanceof Scalar title) {
      return title.text().isBlank() ? Words.title(entry.name()) : title.text().strip();
    }
    problems.add(
        entry.value().place(),
        "the title of a value is a text, found " + entry.value().kind(),
        "write `" + entry.name() + ": title`");
    return "";
  }

  private void add(Scalar id, String title, Map<String, NamedValue> named) {
    Ids.checkValue(id, problems);
    if (named.putIfAbsent(id.text(), new NamedValue(id.text(), title)) != null) {
      problems.add(
          id.place(), "the value " + Words.quoted(id.text()) + " is listed twice", "remove one");
    }
  }

  private Optional<Domain> atLeastTwo(Definition definition, Place place, List<NamedValue> values) {
    if (values.size() < 2) {
      problems.add(
          place,
          definition.what() + " needs at least two values",
          "a reading that is always the same tells nothing; add the other values");
    }
    return values.isEmpty() ? Optional.empty() : Optional.of(choiceOf(values));
  }

  private static Domain choiceOf(List<NamedValue> values) {
    List<String> ids = values.stream().map(NamedValue::id).sorted().toList();
    return new Domain.Choice(values, ids.equals(List.of("no", "yes")));
  }
}
