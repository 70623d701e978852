package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Curve;
import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.Reading;
import io.faultwright.model.Sorted;
import io.faultwright.quantity.Atmosphere;
import io.faultwright.quantity.Dimension;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Line;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Reads readings that are computed with the saturation of the machine's refrigerant: superheat
 * (over the dew point of the suction), subcooling (under the bubble point of the liquid), and the
 * saturation temperature itself.
 */
final class SaturationResolver {
  static final String SUPERHEAT = "superheat";
  static final String SUBCOOLING = "subcooling";
  static final String SATURATION = "saturation";

  private static final String LINE = "line";
  private static final String PRESSURE = "pressure";
  private static final String ALTITUDE = "altitude";
  private static final String ON = "on";
  private static final List<String> LINES =
      Stream.of(Line.values()).map(line -> line.name().toLowerCase(Locale.ROOT)).toList();
  private static final Unit CELSIUS = Units.find("°C").orElseThrow();
  private static final Unit BAR = Units.find("bar(a)").orElseThrow();
  private static final Unit METRE = Units.find("m").orElseThrow();
  private static final BigFraction ONE = BigFraction.ONE;

  private final Context context;
  private final Problems problems;
  private final Map<String, Reading> observed;
  private final Equipment equipment;

  /**
   * @param observed readings that could be read and are not computed
   */
  SaturationResolver(Context context, Map<String, Reading> observed, Equipment equipment) {
    this.context = context;
    this.problems = context.problems();
    this.observed = observed;
    this.equipment = equipment;
  }

  /** Which of its keys a reading has, if any. */
  static Optional<String> kind(Fields fields) {
    return Stream.of(SUPERHEAT, SUBCOOLING, SATURATION).filter(fields::has).findFirst();
  }

  /** The reading; empty where it could not be read. */
  Optional<Reading> resolve(Definition definition, Fields fields) {
    String kind = kind(fields).orElseThrow();
    new ComputedReading(context, definition, fields).checkKeys(kind);
    Optional<Node> body = fields.find(kind);
    if (body.isEmpty()) {
      return Optional.empty();
    }
    Given given = new Given(definition, kind, body.get());
    Optional<Derived> pressure = given.absolute();
    Optional<Line> line = given.line();
    Optional<Reading> pipe = kind.equals(SATURATION) ? Optional.empty() : given.pipe();
    boolean whole = pipe.isPresent() || kind.equals(SATURATION);
    return pressure.isPresent() && line.isPresent() && whole
        ? reading(definition, fields, given, form(kind, line.get(), pressure.get(), pipe))
        : Optional.empty();
  }

  /** The form in kelvin, or °C for a saturation temperature. */
  private Derived form(String kind, Line line, Derived pressure, Optional<Reading> pipe) {
    Derived saturated =
        Derived.along(new Curve.OfSaturation(line, equipment.refrigerants()), pressure);
    return switch (kind) {
      case SUPERHEAT -> Derived.of(pipe.orElseThrow(), CELSIUS).plus(saturated.times(ONE.negate()));
      case SUBCOOLING ->
          saturated.plus(Derived.of(pipe.orElseThrow(), CELSIUS).times(ONE.negate()));
      default -> saturated;
    };
  }

  private Optional<Reading> reading(
      Definition definition, Fields fields, Given given, Derived form) {
    Unit unit =
        given
            .pipe
            .map(pipe -> Units.ofDifferences(((Domain.Measured) pipe.domain()).unit()))
            .orElse(CELSIUS);
    Derived inUnit = form.times(unit.scale().reciprocal());
    List<Build> builds = buildsWithRefrigerant(given);
    if (builds.isEmpty()) {
      problems.add(
          definition.place(),
          "no model with these readings says which refrigerant it has",
          "add `refrigerant: R-404A`, or the one it has, to the models or to an option's value");
      return Optional.empty();
    }
    return range(inUnit, builds, definition)
        .map(
            range ->
                new ComputedReading(context, definition, fields)
                    .from(given.operands, inUnit, unit, range, applies(inUnit, builds)));
  }

  private List<Build> buildsWithRefrigerant(Given given) {
    return equipment.builds().stream()
        .filter(build -> build.model().refrigerant().isPresent())
        .filter(build -> given.operands.stream().allMatch(one -> build.satisfies(one.applies())))
        .toList();
  }

  private Condition applies(Derived form, List<Build> builds) {
    Condition operands = form.applies(observed);
    SortedSet<String> models = new TreeSet<>();
    builds.forEach(build -> models.add(build.model().id()));
    boolean all =
        equipment.builds().stream()
            .filter(build -> build.satisfies(operands))
            .allMatch(build -> models.contains(build.model().id()));
    if (all) {
      return operands;
    }
    Condition.Test having =
        new Condition.Test(
            Equipment.MODEL,
            new Condition.OneOf(Sorted.set(models)),
            form.operands().stream().map(observed::get).findFirst().orElseThrow().place());
    return new Condition.All(List.of(operands, having));
  }

  private Optional<Interval> range(Derived form, List<Build> builds, Definition definition) {
    List<Interval> ranges =
        builds.stream()
            .map(build -> build.model().refrigerant())
            .distinct()
            .flatMap(refrigerant -> form.range(this::range, refrigerant).stream())
            .toList();
    if (ranges.isEmpty()) {
      problems.add(
          definition.place(),
          "the range of the pressure lies outside what is known of the refrigerant",
          "correct the range, or its unit");
    }
    return ranges.stream().reduce(SaturationResolver::hull);
  }

  private Interval range(String reading) {
    return ((Domain.Measured) observed.get(reading).domain()).range();
  }

  private static Interval hull(Interval a, Interval b) {
    BigFraction low = a.low().orElseThrow().value();
    BigFraction high = a.high().orElseThrow().value();
    BigFraction otherLow = b.low().orElseThrow().value();
    BigFraction otherHigh = b.high().orElseThrow().value();
    return Interval.closed(
        low.compareTo(otherLow) < 0 ? low : otherLow,
        high.compareTo(otherHigh) > 0 ? high : otherHigh);
  }

  /** What a computed reading names. */
  private final class Given {
    private final Definition definition;
    private final String kind;
    private final Fields fields;
    private final List<Reading> operands = new ArrayList<>();
    private final Optional<Reading> pipe;

    Given(Definition definition, String kind, Node body) {
      this.definition = definition;
      this.kind = kind;
      boolean saturation = kind.equals(SATURATION);
      List<String> keys = List.of(PRESSURE, saturation ? ON : LINE, ALTITUDE);
      this.fields = new Fields(body, "`" + kind + "`", body.place(), keys, problems);
      this.pipe =
          saturation
              ? Optional.empty()
              : operand(LINE, "a temperature in °C or °F", Dimension.TEMPERATURE);
    }

    Optional<Reading> pipe() {
      return pipe;
    }

    Optional<Line> line() {
      if (!kind.equals(SATURATION)) {
        return Optional.of(kind.equals(SUPERHEAT) ? Line.DEW : Line.BUBBLE);
      }
      return fields.requireScalar(ON).flatMap(this::line);
    }

    private Optional<Line> line(Scalar word) {
      String text = word.text().strip();
      if (LINES.contains(text)) {
        return Optional.of(Line.valueOf(text.toUpperCase(Locale.ROOT)));
      }
      problems.add(word.place(), "unknown line " + Words.quoted(text), NearMatch.help(text, LINES));
      return Optional.empty();
    }

    private Optional<Reading> operand(String key, String what, Dimension... fitting) {
      Optional<Scalar> written = fields.requireScalar(key);
      Optional<Reading> reading = written.flatMap(this::observed);
      Optional<Reading> found = reading.filter(one -> fits(one, fitting));
      if (reading.isPresent() && found.isEmpty()) {
        problems.add(
            written.get().place(),
            Words.quoted(reading.get().id()) + " is not " + what,
            "name a reading that is measured so");
      }
      found.ifPresent(operands::add);
      return found;
    }

    private Optional<Reading> observed(Scalar written) {
      String id = context.names().reference(Kind.READING, written);
      if (isComputed(id)) {
        problems.add(
            written.place(),
            Words.quoted(id) + " is computed itself",
            "name a reading that is taken on the machine");
      }
      return Optional.ofNullable(observed.get(id));
    }

    private boolean isComputed(String id) {
      return Optional.ofNullable(context.outline().of(Kind.READING).get(id))
          .filter(ComputedReading::isOne)
          .isPresent();
    }

    private static boolean fits(Reading reading, Dimension... fitting) {
      return reading.domain() instanceof Domain.Measured measured
          && List.of(fitting).contains(measured.unit().dimension());
    }

    /** The absolute pressure in bar: the gauge counts from the air around it. */
    Optional<Derived> absolute() {
      Optional<Reading> pressure =
          operand(
              PRESSURE,
              "a pressure, gauge or absolute",
              Dimension.GAUGE_PRESSURE,
              Dimension.ABSOLUTE_PRESSURE);
      return pressure.flatMap(reading -> fields.has(ALTITUDE) ? high(reading) : low(reading));
    }

    private Optional<Derived> low(Reading pressure) {
      Derived inBar = inBar(pressure);
      return Optional.of(isGauge(pressure) ? inBar.plus(Atmosphere.atSeaLevel()) : inBar);
    }

    private static boolean isGauge(Reading pressure) {
      return fits(pressure, Dimension.GAUGE_PRESSURE);
    }

    private static Derived inBar(Reading pressure) {
      Unit unit = ((Domain.Measured) pressure.domain()).unit();
      Derived value = Derived.same(pressure.id());
      return value.times(unit.scale().divide(BAR.scale()));
    }

    private Optional<Derived> high(Reading pressure) {
      if (!isGauge(pressure)) {
        problems.add(
            fields.place(ALTITUDE),
            "an absolute pressure does not depend on the altitude",
            "take `altitude` out of " + definition.what());
        return Optional.empty();
      }
      return operand(ALTITUDE, "a length, such as the altitude in m", Dimension.LENGTH)
          .filter(this::isWithinAtmosphere)
          .map(one -> Derived.along(new Curve.OfAltitude(), Derived.of(one, METRE)))
          .map(inBar(pressure)::plus);
    }

    private boolean isWithinAtmosphere(Reading altitude) {
      Domain.Measured measured = (Domain.Measured) altitude.domain();
      Interval known = Atmosphere.overAltitude().domain();
      boolean within =
          Stream.of(measured.range().low(), measured.range().high())
              .map(end -> measured.unit().convert(end.orElseThrow().value(), METRE))
              .allMatch(known::contains);
      if (!within) {
        problems.add(
            fields.place(ALTITUDE),
            Words.quoted(altitude.id()) + " reaches beyond 0 to 5000 m",
            "the pressure of the air is known between these; narrow the range");
      }
      return within;
    }
  }
}
