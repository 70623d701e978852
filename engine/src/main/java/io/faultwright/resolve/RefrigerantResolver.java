package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Polyline;
import io.faultwright.quantity.Refrigerant;
import io.faultwright.quantity.Refrigerants;
import io.faultwright.quantity.SafetyClass;
import io.faultwright.quantity.SaturationPoint;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Scalar;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Reads which refrigerants there are: those that come along, and those with a table of their own.
 */
final class RefrigerantResolver {
  private static final String AT = "at";
  private static final List<String> ROW_KEYS = List.of(AT, "bubble", "dew");
  private static final List<String> KEYS = List.of("safety", "source", "table");
  private static final List<String> CLASSES =
      Arrays.stream(SafetyClass.values()).map(Enum::name).toList();
  private static final Unit CELSIUS = Units.find("°C").orElseThrow();
  private static final Unit BAR = Units.find("bar(a)").orElseThrow();

  private final Context context;
  private final Problems problems;
  private final SortedMap<String, Optional<Refrigerant>> written = new TreeMap<>();
  private final SortedMap<String, Refrigerant> used = new TreeMap<>();

  RefrigerantResolver(Context context) {
    this.context = context;
    this.problems = context.problems();
    for (Definition definition : context.outline().of(Kind.REFRIGERANT).values()) {
      written.put(definition.id(), read(definition));
    }
  }

  /** Those that a model or an option's value has named by now, by id. */
  SortedMap<String, Refrigerant> used() {
    return used;
  }

  /** The id that is written; empty where no refrigerant is known by it. */
  Optional<String> named(Scalar name) {
    String id = name.text().strip();
    Optional<Refrigerant> found = written.containsKey(id) ? written.get(id) : Refrigerants.find(id);
    found.ifPresent(refrigerant -> used.put(id, refrigerant));
    if (found.isEmpty() && !written.containsKey(id)) {
      problems.add(
          name.place(), "unknown refrigerant " + Words.quoted(id), NearMatch.help(id, known()));
    }
    return found.map(Refrigerant::id);
  }

  private SortedSet<String> known() {
    SortedSet<String> known = new TreeSet<>(written.keySet());
    known.addAll(Refrigerants.ids());
    return known;
  }

  private Optional<Refrigerant> read(Definition definition) {
    Fields fields = Fields.of(definition, KEYS, problems);
    Optional<SafetyClass> safety = fields.requireScalar("safety").flatMap(this::safety);
    String source = fields.requireText("source");
    fields.require("table");
    List<Row> rows = fields.list("table").stream().map(this::row).toList();
    Optional<Polyline> bubble = line(definition, rows, Row::bubble, "bubble");
    Optional<Polyline> dew = line(definition, rows, Row::dew, "dew");
    if (safety.isEmpty() || bubble.isEmpty() || dew.isEmpty()) {
      return Optional.empty();
    }
    checkOrder(definition, bubble.get(), dew.get());
    return Optional.of(
        new Refrigerant(definition.id(), safety.get(), bubble.get(), dew.get(), source));
  }

  private Optional<SafetyClass> safety(Scalar word) {
    String text = word.text().strip();
    if (CLASSES.contains(text)) {
      return Optional.of(SafetyClass.valueOf(text));
    }
    problems.add(
        word.place(),
        "unknown safety class " + Words.quoted(text),
        "write one of " + Words.quoted(CLASSES) + ", as on the nameplate");
    return Optional.empty();
  }

  /** One line of a saturation table, as far as it could be read. */
  private record Row(
      Node node,
      Optional<BigFraction> celsius,
      Optional<BigFraction> bubble,
      Optional<BigFraction> dew) {
    Optional<SaturationPoint> point(Function<Row, Optional<BigFraction>> line) {
      return celsius.flatMap(at -> line.apply(this).map(bar -> new SaturationPoint(at, bar)));
    }
  }

  private Row row(Node node) {
    Fields fields = new Fields(node, "the row", node.place(), ROW_KEYS, problems);
    return new Row(
        node,
        number(fields, AT, CELSIUS),
        number(fields, "bubble", BAR),
        number(fields, "dew", BAR));
  }

  private Optional<BigFraction> number(Fields fields, String key, Unit unit) {
    return fields
        .requireScalar(key)
        .flatMap(
            text -> context.quantities().number(text.place(), text.text(), unit, "`" + key + "`"));
  }

  private Optional<Polyline> line(
      Definition definition,
      List<Row> rows,
      Function<Row, Optional<BigFraction>> pressure,
      String name) {
    List<SaturationPoint> points =
        rows.stream().flatMap(row -> row.point(pressure).stream()).toList();
    if (points.size() < rows.size() || rows.isEmpty()) {
      return Optional.empty();
    }
    if (points.size() < 2) {
      problems.add(
          definition.place(), "a saturation table needs two rows or more", "add the other rows");
      return Optional.empty();
    }
    OptionalInt wrong = SaturationPoint.firstBreak(points);
    if (wrong.isPresent()) {
      problems.add(
          rows.get(wrong.getAsInt()).node().place(),
          "temperature and " + name + " pressure must rise from row to row",
          "correct the figure, or put the rows in the order of their temperatures");
      return Optional.empty();
    }
    return Optional.of(SaturationPoint.line(points));
  }

  private void checkOrder(Definition definition, Polyline bubble, Polyline dew) {
    SaturationPoint.dewAboveBubble(bubble, dew)
        .ifPresent(
            celsius ->
                problems.add(
                    definition.place(),
                    "at "
                        + Decimals.show(celsius)
                        + " °C the dew pressure is greater than the bubble pressure",
                    "exchange the two columns, or correct the figures"));
  }
}
