package io.faultwright.analysis.space;

import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A group of readings that hang together, as linear inequalities over those of them that are
 * observed. A stretch keeps a reading between two numbers; a side keeps it above or below a limit,
 * which within one cell of its driver is a straight line over the driver.
 */
final class Coupling {
  private final Space space;
  private final SortedSet<String> readings;
  private final Optional<String> separator;
  private final List<Integer> positions;
  private final List<String> variables;
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
    this.variables =
        positions.stream()
            .map(axis -> space.axes().get(axis).subject())
            .filter(Axis.OfReading.class::isInstance)
            .map(subject -> ((Axis.OfReading) subject).reading())
            .filter(reading -> derived(reading).isEmpty())
            .toList();
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

  private Optional<Derived> derived(String reading) {
    return space.knowledge().readings().get(reading).derived();
  }

  private Domain.Measured domain(String reading) {
    return (Domain.Measured) space.knowledge().readings().get(reading).domain();
  }

  /** A reading's value over the observed readings. */
  LinearForm form(String reading) {
    LinearForm known = forms.get(reading);
    if (known != null) {
      return known;
    }
    LinearForm form =
        derived(reading)
            .map(this::computed)
            .orElseGet(() -> LinearForm.variable(variables.size(), variables.indexOf(reading)));
    forms.put(reading, form);
    return form;
  }

  private LinearForm computed(Derived derived) {
    LinearForm sum = LinearForm.constant(variables.size(), derived.constant());
    for (Map.Entry<String, BigFraction> term : derived.terms().entrySet()) {
      sum = sum.plus(form(term.getKey()).times(term.getValue()));
    }
    return sum;
  }

  /** Every observed reading somewhere in its range. */
  LinearSystem ranges() {
    LinearSystem system = LinearSystem.free(variables.size());
    for (String reading : variables) {
      system = system.with(form(reading), domain(reading).range());
    }
    return system;
  }

  /**
   * The system with what a cell says.
   *
   * @param path the cell on every axis of the group up to the position
   */
  LinearSystem with(LinearSystem system, Build build, int[] path, int position) {
    Axis axis = space.axes().get(position);
    Cell cell = axis.cells().get(path[position]);
    if (cell instanceof Cell.Stretch stretch && axis.subject() instanceof Axis.OfReading of) {
      return system.with(form(of.reading()), stretch.interval());
    }
    return cell instanceof Cell.SideOf at && axis.subject() instanceof Axis.OfSide of
        ? onSide(system, of.reading(), at.side(), build, path)
        : system;
  }

  private LinearSystem onSide(
      LinearSystem system, String reading, Side side, Build build, int[] path) {
    BigFraction zero = BigFraction.ZERO;
    LinearSystem result = system;
    if (side == Side.ABOVE) {
      return system.with(
          over(reading, Band::high, build, path).orElseThrow(), Interval.above(zero));
    }
    if (side == Side.BELOW) {
      return system.with(over(reading, Band::low, build, path).orElseThrow(), Interval.below(zero));
    }
    Optional<LinearForm> overLow = over(reading, Band::low, build, path);
    Optional<LinearForm> overHigh = over(reading, Band::high, build, path);
    if (overLow.isPresent()) {
      result = result.with(overLow.get(), Interval.atLeast(zero));
    }
    return overHigh.isPresent() ? result.with(overHigh.get(), Interval.atMost(zero)) : result;
  }

  /** By how much a reading lies over one of its limits; empty where it has no such limit. */
  private Optional<LinearForm> over(
      String reading, Function<Band, Optional<BigFraction>> limit, Build build, int[] path) {
    return limit(reading, limit, build, path).map(form(reading)::minus);
  }

  private Optional<LinearForm> limit(
      String reading, Function<Band, Optional<BigFraction>> limit, Build build, int[] path) {
    LimitsCurve curve = space.curve(reading, build);
    Optional<String> driver = space.knowledge().limits().get(reading).driver();
    if (driver.isEmpty()) {
      return curve.at(Optional.empty()).flatMap(limit).map(this::constant);
    }
    int axis = space.position(new Axis.OfReading(driver.get())).orElseThrow();
    Cell cell = space.axes().get(axis).cells().get(path[axis]);
    Interval stretch = ((Cell.Stretch) cell).interval();
    return line(curve, limit, stretch, form(driver.get()));
  }

  /** The straight line that a limit follows along one stretch of its driver. */
  private Optional<LinearForm> line(
      LimitsCurve curve,
      Function<Band, Optional<BigFraction>> limit,
      Interval stretch,
      LinearForm driver) {
    BigFraction at = Stretches.middle(stretch);
    BigFraction step = stretch.high().orElseThrow().value().subtract(at).divide(2);
    Optional<BigFraction> here = curve.at(Optional.of(at)).flatMap(limit);
    Optional<BigFraction> there = curve.at(Optional.of(at.add(step))).flatMap(limit);
    if (step.signum() == 0) {
      return here.map(this::constant);
    }
    return here.flatMap(
        from ->
            there.map(
                to -> driver.plus(at.negate()).times(to.subtract(from).divide(step)).plus(from)));
  }

  private LinearForm constant(BigFraction value) {
    return LinearForm.constant(variables.size(), value);
  }

  /**
   * Values for the readings that are taken on a path; round ones, each fitting those before.
   *
   * @param known values that are chosen already, such as the separator's
   */
  SortedMap<String, Value> values(Build build, int[] path, Map<String, Value> known) {
    LinearSystem system = ranges();
    for (int position : positions) {
      system = with(system, build, path, position);
    }
    List<BigFraction> chosen = new ArrayList<>();
    for (String reading : variables) {
      Interval left = system.image(form(reading)).orElseThrow();
      BigFraction value =
          known.get(reading) instanceof Value.Number number
              ? number.amount()
              : RoundNumber.in(left, domain(reading).resolution());
      system = system.with(form(reading), Interval.point(value));
      chosen.add(value);
    }
    SortedMap<String, Value> values = new TreeMap<>();
    readings.stream()
        .filter(reading -> isTaken(reading, path))
        .forEach(reading -> values.put(reading, new Value.Number(form(reading).at(chosen))));
    return values;
  }

  private boolean isTaken(String reading, int[] path) {
    int axis = space.position(new Axis.OfReading(reading)).orElseThrow();
    return space.axes().get(axis).cells().get(path[axis]) instanceof Cell.Stretch;
  }
}
