package io.faultwright.analysis.space;

import io.faultwright.model.Bend;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Curve;
import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.Facet;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Slope;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Polyline;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A group of readings that hang together, as statements over those of them that are observed. A
 * stretch keeps a reading between two numbers; a side keeps it above or below a limit, which along
 * one facet of its table is flat over what it follows. What is read off a curve is a variable of
 * its own.
 */
final class Coupling {
  /** What is read off a curve, whatever it is multiplied by. */
  private record CurvePoint(Curve curve, Derived argument) {}

  private final Space space;
  private final SortedSet<String> readings;
  private final Optional<String> separator;
  private final List<Integer> positions;
  private final List<String> observed;
  private final List<CurvePoint> points;
  private final Map<String, LinearForm> forms = new ConcurrentHashMap<>();

  Coupling(Space space, CoupledReadings.Group group) {
    this.space = space;
    this.separator = group.separator();
    this.readings = group.readings();
    this.positions =
        IntStream.range(0, space.axes().size())
            .filter(axis -> isAbout(space.axes().get(axis).subject(), readings))
            .boxed()
            .toList();
    this.observed =
        positions.stream()
            .map(axis -> space.axes().get(axis).subject())
            .filter(Axis.OfReading.class::isInstance)
            .map(subject -> ((Axis.OfReading) subject).reading())
            .filter(reading -> derived(reading).isEmpty())
            .toList();
    Set<CurvePoint> found = new LinkedHashSet<>();
    readings.forEach(reading -> derived(reading).ifPresent(form -> collect(form, found)));
    this.points = List.copyOf(found);
  }

  /** The points on curves of a form, those that another depends on first. */
  private static void collect(Derived form, Set<CurvePoint> found) {
    for (Bend bend : form.bends()) {
      collect(bend.argument(), found);
      found.add(new CurvePoint(bend.curve(), bend.argument()));
    }
  }

  private static boolean isAbout(Axis.Subject subject, Set<String> readings) {
    return subject instanceof Axis.OfReading of && readings.contains(of.reading())
        || subject instanceof Axis.OfSide side && readings.contains(side.reading());
  }

  SortedSet<String> readings() {
    return readings;
  }

  /** The reading through which alone the group depends on others. */
  Optional<String> separator() {
    return separator;
  }

  /** Levels of the axes about its readings, in ascending order. */
  List<Integer> positions() {
    return positions;
  }

  /** Whether it depends on the machine's refrigerant. */
  boolean needsRefrigerant() {
    return points.stream().anyMatch(point -> point.curve() instanceof Curve.OfSaturation);
  }

  private Optional<Derived> derived(String reading) {
    return space.knowledge().readings().get(reading).derived();
  }

  private Domain.Measured domain(String reading) {
    return (Domain.Measured) space.knowledge().readings().get(reading).domain();
  }

  private int variables() {
    return observed.size() + points.size();
  }

  /** A reading's value over the observed readings and the points on curves. */
  LinearForm form(String reading) {
    LinearForm known = forms.get(reading);
    if (known != null) {
      return known;
    }
    LinearForm form =
        derived(reading)
            .map(this::computed)
            .orElseGet(() -> LinearForm.variable(variables(), observed.indexOf(reading)));
    forms.put(reading, form);
    return form;
  }

  private LinearForm computed(Derived derived) {
    LinearForm sum = constant(derived.constant());
    for (Map.Entry<String, BigFraction> term : derived.terms().entrySet()) {
      sum = sum.plus(form(term.getKey()).times(term.getValue()));
    }
    for (Bend bend : derived.bends()) {
      sum = sum.plus(LinearForm.variable(variables(), variable(bend)).times(bend.factor()));
    }
    return sum;
  }

  private int variable(Bend bend) {
    return observed.size() + points.indexOf(new CurvePoint(bend.curve(), bend.argument()));
  }

  /** Every observed reading somewhere in its range. */
  Solutions ranges() {
    CurvedSystem system = CurvedSystem.free(variables());
    for (String reading : observed) {
      system = system.with(form(reading), domain(reading).range());
    }
    return Solutions.of(system);
  }

  /**
   * The solutions that also fit what a cell says.
   *
   * @param path the cell on every axis of the group up to the position
   */
  Solutions with(Solutions solutions, Build build, int[] path, int position) {
    Axis axis = space.axes().get(position);
    Cell cell = axis.cells().get(path[position]);
    if (axis.subject() instanceof Axis.OfReading of) {
      return cell instanceof Cell.Stretch stretch
          ? solutions
              .map(system -> readOff(system, derivedForms(of.reading()), build))
              .with(form(of.reading()), stretch.interval())
          : solutions;
    }
    String reading = ((Axis.OfSide) axis.subject()).reading();
    if (cell instanceof Cell.SideOf at) {
      List<Facet> facets = facets(reading, build, path);
      return solutions.flatMap(
          system -> facets.stream().flatMap(one -> onSide(system, reading, at.side(), one)));
    }
    return cell instanceof Cell.NoFigure && isTaken(reading, path)
        ? solutions.flatMap(system -> withoutFigure(system, reading, build, path))
        : solutions;
  }

  private Stream<Derived> derivedForms(String reading) {
    return derived(reading).stream()
        .flatMap(
            form ->
                Stream.concat(
                    Stream.of(form), form.terms().keySet().stream().flatMap(this::derivedForms)));
  }

  /** The system in which the points on curves that forms need are read off. */
  private CurvedSystem readOff(CurvedSystem system, Stream<Derived> forms, Build build) {
    Set<CurvePoint> needed = new LinkedHashSet<>();
    forms.forEach(form -> collect(form, needed));
    CurvedSystem result = system;
    for (CurvePoint point : needed) {
      int variable = observed.size() + points.indexOf(point);
      if (!result.reads(variable)) {
        Polyline curve = curve(point, build);
        LinearForm argument = computed(point.argument());
        result = result.with(new CurvedSystem.Reading(variable, curve, argument, curve.domain()));
      }
    }
    return result;
  }

  private static Polyline curve(CurvePoint point, Build build) {
    return point.curve().on(build.model().refrigerant()).orElseThrow();
  }

  /** The pieces of limits over the cells of their drivers. */
  private List<Facet> facets(String reading, Build build, int[] path) {
    List<BigFraction> inside =
        table(reading).drivers().stream()
            .map(driver -> Stretches.middle(stretch(driver, path)))
            .toList();
    return space.curve(reading, build).facets(inside);
  }

  private LimitsTable table(String reading) {
    return space.knowledge().limits().get(reading);
  }

  private Interval stretch(String reading, int[] path) {
    return ((Cell.Stretch) cell(reading, path)).interval();
  }

  private Cell cell(String reading, int[] path) {
    int axis = space.position(new Axis.OfReading(reading)).orElseThrow();
    return space.axes().get(axis).cells().get(path[axis]);
  }

  private boolean isTaken(String reading, int[] path) {
    return Stream.concat(Stream.of(reading), table(reading).drivers().stream())
        .allMatch(one -> cell(one, path) instanceof Cell.Stretch);
  }

  private Stream<CurvedSystem> withoutFigure(
      CurvedSystem system, String reading, Build build, int[] path) {
    return facets(reading, build, path).stream()
        .filter(facet -> facet.figures().isEmpty())
        .map(facet -> within(system, reading, facet));
  }

  private CurvedSystem within(CurvedSystem system, String reading, Facet facet) {
    Interval inside =
        facet.edge() ? Interval.atLeast(BigFraction.ZERO) : Interval.above(BigFraction.ZERO);
    return facet.border().map(border -> system.with(form(border, reading), inside)).orElse(system);
  }

  private Stream<CurvedSystem> onSide(CurvedSystem system, String reading, Side side, Facet facet) {
    if (facet.figures().isEmpty()) {
      return Stream.of();
    }
    CurvedSystem here = within(system, reading, facet);
    Optional<LinearForm> overLow = facet.figures().get().low().map(low -> over(reading, low));
    Optional<LinearForm> overHigh = facet.figures().get().high().map(high -> over(reading, high));
    BigFraction zero = BigFraction.ZERO;
    return switch (side) {
      case BELOW -> overLow.stream().map(form -> here.with(form, Interval.below(zero)));
      case ABOVE -> overHigh.stream().map(form -> here.with(form, Interval.above(zero)));
      case WITHIN -> {
        CurvedSystem above =
            overLow.map(form -> here.with(form, Interval.atLeast(zero))).orElse(here);
        yield Stream.of(
            overHigh.map(form -> above.with(form, Interval.atMost(zero))).orElse(above));
      }
    };
  }

  /** By how much a reading lies over one of its limits. */
  private LinearForm over(String reading, Slope limit) {
    return form(reading).minus(form(limit, reading));
  }

  private LinearForm form(Slope slope, String limited) {
    LinearForm sum = constant(slope.constant());
    List<String> drivers = table(limited).drivers();
    for (int i = 0; i < slope.factors().size(); i++) {
      if (slope.factors().get(i).signum() != 0) {
        sum = sum.plus(form(drivers.get(i)).times(slope.factors().get(i)));
      }
    }
    return sum;
  }

  private LinearForm constant(BigFraction value) {
    return LinearForm.constant(variables(), value);
  }

  /**
   * The solutions in which each computed reading that has no value, though all it is computed from
   * was taken, lies beyond an end of a curve.
   */
  Solutions beyondCurves(Solutions solutions, Build build, int[] path) {
    Solutions left = solutions;
    for (String reading : readings) {
      if (isBeyond(reading, path)) {
        Derived form = derived(reading).orElseThrow();
        left =
            left.flatMap(
                system -> form.bends().stream().flatMap(bend -> beyond(system, bend, build)));
      }
    }
    return left;
  }

  private boolean isBeyond(String reading, int[] path) {
    return derived(reading).isPresent()
        && cell(reading, path) instanceof Cell.NotTaken
        && derived(reading).get().operands().stream()
            .allMatch(operand -> cell(operand, path) instanceof Cell.Stretch);
  }

  private Stream<CurvedSystem> beyond(CurvedSystem system, Bend bend, Build build) {
    CurvePoint point = new CurvePoint(bend.curve(), bend.argument());
    Interval known = curve(point, build).domain();
    CurvedSystem here = readOff(system, Stream.of(bend.argument()), build);
    LinearForm argument = computed(bend.argument());
    return Stream.of(
        here.with(argument, Interval.below(known.low().orElseThrow().value())),
        here.with(argument, Interval.above(known.high().orElseThrow().value())));
  }

  /**
   * Values for the readings that are taken on a path; round ones, each fitting those before.
   *
   * @param known values that are chosen already, such as the separator's
   */
  SortedMap<String, Value> values(Build build, int[] path, Map<String, Value> known) {
    Solutions solutions = ranges();
    for (int position : positions) {
      solutions = with(solutions, build, path, position);
    }
    CurvedSystem system = beyondCurves(solutions, build, path).solvable().parts().get(0);
    for (String reading : observed) {
      BigFraction value =
          known.get(reading) instanceof Value.Number number
              ? number.amount()
              : RoundValue.of(system, form(reading), domain(reading).resolution());
      system = system.with(form(reading), Interval.point(value));
    }
    List<BigFraction> chosen = system.solution().orElseThrow();
    SortedMap<String, Value> values = new TreeMap<>();
    readings.stream()
        .filter(reading -> cell(reading, path) instanceof Cell.Stretch)
        .forEach(reading -> values.put(reading, new Value.Number(form(reading).at(chosen))));
    return values;
  }
}
