package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Line;
import io.faultwright.quantity.Polyline;
import io.faultwright.quantity.Refrigerant;
import io.faultwright.quantity.Refrigerants;
import io.faultwright.quantity.SafetyClass;
import io.faultwright.quantity.SaturationPoint;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Reads which refrigerants there are: those that come along, and those with a table of their own.
 */
final class RefrigerantResolver {
  private static final String AT = "at";
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
    List<Node> rows = fields.list("table");
    Optional<Polyline> bubble = line(definition, rows, Line.BUBBLE);
    Optional<Polyline> dew = line(definition, rows, Line.DEW);
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

  private Optional<Polyline> line(Definition definition, List<Node> rows, Line line) {
    List<SaturationPoint> points = new ArrayList<>();
    List<Node> read = new ArrayList<>();
    for (Node row : rows) {
      Optional<SaturationPoint> point = point(row, line);
      point.ifPresent(points::add);
      point.ifPresent(done -> read.add(row));
    }
    OptionalInt wrong = SaturationPoint.firstBreak(points);
    if (points.size() < rows.size() || rows.isEmpty()) {
      return Optional.empty();
    }
    if (points.size() < 2) {
      problems.add(
          definition.place(), "a saturation table needs two rows or more", "add the other rows");
      return Optional.empty();
    }
    if (wrong.isPresent()) {
      problems.add(
          read.get(wrong.getAsInt()).place(),
          "temperature and " + word(line) + " pressure must rise from row to row",
          "correct the figure, or put the rows in the order of their temperatures");
      return Optional.empty();
    }
    return Optional.of(SaturationPoint.line(points));
  }

  private static String word(Line line) {
    return line.name().toLowerCase(Locale.ROOT);
  }

  private Optional<SaturationPoint> point(Node row, Line line) {
    Problems told = line == Line.BUBBLE ? problems : new Problems();
    Fields fields = new Fields(row, "the row", row.place(), List.of(AT, "bubble", "dew"), told);
    QuantityParser quantities = new QuantityParser(line == Line.BUBBLE ? problems : new Problems());
    Optional<BigFraction> at =
        fields
            .requireScalar(AT)
            .flatMap(text -> quantities.number(text.place(), text.text(), CELSIUS, "`at`"));
    Optional<Scalar> written = fields.requireScalar(word(line));
    Optional<BigFraction> pressure =
        written.flatMap(
            text ->
                context
                    .quantities()
                    .number(text.place(), text.text(), BAR, "`" + word(line) + "`"));
    return at.flatMap(celsius -> pressure.map(bar -> new SaturationPoint(celsius, bar)));
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
