package io.faultwright.analysis.space;

import io.faultwright.model.Build;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Domain;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Turns cells into a concrete situation with round numbers. */
public final class Witness {
  private final Space space;
  private final Map<Axis.Subject, Set<Integer>> preferences = new HashMap<>();

  public Witness(Space space) {
    this.space = space;
  }

  /**
   * A situation of a diagram that holds only consistent situations; the same one every time.
   *
   * @throws IllegalArgumentException for {@link Diagrams#NONE}
   */
  public Situation of(int diagram) {
    return situation(path(diagram));
  }

  /** One cell per axis, the most ordinary first: normal words, within limits, middle stretches. */
  public int[] path(int diagram) {
    if (diagram == Diagrams.NONE) {
      throw new IllegalArgumentException("an empty set has no witness");
    }
    int[] path = new int[space.axes().size()];
    int rest = diagram;
    for (int axis = 0; axis < path.length; axis++) {
      path[axis] = pick(rest, axis);
      rest = space.diagrams().child(rest, axis, path[axis]);
    }
    return path;
  }

  private int pick(int diagram, int axis) {
    for (int cell : preference(space.axes().get(axis))) {
      if (space.diagrams().child(diagram, axis, cell) != Diagrams.NONE) {
        return cell;
      }
    }
    throw new IllegalStateException("a diagram other than NONE has a child");
  }

  private Set<Integer> preference(Axis axis) {
    return preferences.computeIfAbsent(axis.subject(), subject -> ordered(axis));
  }

  private Set<Integer> ordered(Axis axis) {
    Set<Integer> order = new LinkedHashSet<>();
    preferred(axis).stream().forEach(order::add);
    if (axis.cells().get(0) instanceof Cell.Stretch) {
      order.add(axis.cells().size() / 2);
    }
    axis.all().stream().forEach(order::add);
    return order;
  }

  private BitSet preferred(Axis axis) {
    if (axis.subject() instanceof Axis.OfSide) {
      return axis.side(Side.WITHIN);
    }
    if (axis.subject() instanceof Axis.OfReading of) {
      Reading reading = space.knowledge().readings().get(of.reading());
      return axis.where(
          cell -> cell instanceof Cell.Word word && reading.normal().contains(word.value()));
    }
    return new BitSet();
  }

  private Situation situation(int[] path) {
    Build build = ((Cell.Builds) space.axes().get(0).cells().get(path[0])).representative();
    SortedMap<String, Value> readings = new TreeMap<>();
    space.couplings().forEach(coupling -> readings.putAll(coupling.values(build, path, readings)));
    for (int axis = 1; axis < path.length; axis++) {
      if (space.axes().get(axis).subject() instanceof Axis.OfReading of
          && !readings.containsKey(of.reading())) {
        value(of.reading(), path, build, readings)
            .ifPresent(value -> readings.put(of.reading(), value));
      }
    }
    readings.keySet().removeIf(this::isDerived);
    return new Situation(build.facts(), readings);
  }

  private boolean isDerived(String reading) {
    return space.knowledge().readings().get(reading).derived().isPresent();
  }

  /** The value for a reading's cell; readings it depends on stand before it in the order. */
  private Optional<Value> value(
      String reading, int[] path, Build build, SortedMap<String, Value> known) {
    Cell cell = cellOf(new Axis.OfReading(reading), path);
    if (cell instanceof Cell.Word word) {
      return Optional.of(new Value.Word(word.value()));
    }
    if (cell instanceof Cell.NotTaken) {
      return Optional.of(new Value.NotTaken());
    }
    if (cell instanceof Cell.Stretch stretch) {
      Interval within = narrowed(reading, stretch.interval(), path, build, known);
      Domain.Measured domain = (Domain.Measured) space.knowledge().readings().get(reading).domain();
      return Optional.of(new Value.Number(RoundNumber.in(within, domain.resolution())));
    }
    return Optional.empty();
  }

  private Cell cellOf(Axis.Subject subject, int[] path) {
    int position = space.position(subject).orElseThrow();
    return space.axes().get(position).cells().get(path[position]);
  }

  /** The part of a stretch that lies on the wanted side of the limits. */
  private Interval narrowed(
      String reading, Interval stretch, int[] path, Build build, SortedMap<String, Value> known) {
    Axis.Subject subject = new Axis.OfSide(reading);
    if (space.position(subject).isEmpty() || !(cellOf(subject, path) instanceof Cell.SideOf at)) {
      return stretch;
    }
    List<BigFraction> drivers =
        space.knowledge().limits().get(reading).drivers().stream()
            .map(id -> ((Value.Number) known.get(id)).amount())
            .toList();
    Interval side =
        space
            .curve(reading, build)
            .at(drivers)
            .flatMap(band -> band.values(at.side()))
            .orElseThrow();
    return Stretches.intersection(stretch, side).orElseThrow();
  }
}
