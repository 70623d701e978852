package io.faultwright.analysis.random;

import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.Side;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** Places brute-force points into the cells of a space, and remembers which were met. */
final class Cells {
  private final List<Axis> axes;
  private final Diagrams diagrams;
  private final List<Map<Object, Integer>> known = new ArrayList<>();
  private final Map<Build, Integer> builds = new IdentityHashMap<>();
  private final Set<Long> seen = new HashSet<>();

  Cells(SymptomSpace symptom) {
    this.axes = symptom.space().axes();
    this.diagrams = symptom.space().diagrams();
    axes.forEach(axis -> known.add(new HashMap<>()));
  }

  int[] of(Point point, Oracle oracle) {
    int[] path = new int[axes.size()];
    for (int axis = 0; axis < path.length; axis++) {
      path[axis] = cell(axes.get(axis), known.get(axis), point, oracle);
    }
    return path;
  }

  private int cell(Axis axis, Map<Object, Integer> cells, Point point, Oracle oracle) {
    if (axis.subject() instanceof Axis.OfSide of) {
      return cells.computeIfAbsent(
          sideKey(of.reading(), point, oracle), key -> only(axis, sideCell(key)));
    }
    if (axis.subject() instanceof Axis.OfReading of) {
      Optional<Object> key = Optional.ofNullable(point.values().get(of.reading()));
      return cells.computeIfAbsent(key, k -> only(axis, readingCell(key)));
    }
    return builds.computeIfAbsent(
        point.build(), build -> only(axis, cell -> ((Cell.Builds) cell).builds().contains(build)));
  }

  private static Predicate<Cell> readingCell(Optional<Object> value) {
    if (value.isEmpty()) {
      return cell -> cell instanceof Cell.Absent;
    }
    if (value.get() == Point.REFUSED) {
      return cell -> cell instanceof Cell.NotTaken;
    }
    return value.get() instanceof Long amount
        ? cell -> cell instanceof Cell.Stretch stretch && stretch.interval().contains(exact(amount))
        : cell -> cell instanceof Cell.Word word && word.value().equals(value.get());
  }

  private static BigFraction exact(long amount) {
    return BigFraction.of(amount, Oracle.SCALE);
  }

  /** The side, or why there is none: a cell's type. */
  private static Object sideKey(String reading, Point point, Oracle oracle) {
    Optional<Side> side = oracle.side(reading, point);
    if (side.isPresent()) {
      return side.get();
    }
    Object value = point.values().get(reading);
    Object driver = oracle.follows(reading) ? point.values().get("driver") : value;
    if (value == null || value == Point.REFUSED) {
      return value == null ? Cell.Absent.class : Cell.NotTaken.class;
    }
    if (driver == null || driver == Point.REFUSED) {
      return driver == null ? Cell.Absent.class : Cell.NotTaken.class;
    }
    return Cell.NoFigure.class;
  }

  private static Predicate<Cell> sideCell(Object key) {
    return key instanceof Side side
        ? cell -> cell instanceof Cell.SideOf at && at.side() == side
        : ((Class<?>) key)::isInstance;
  }

  private static int only(Axis axis, Predicate<Cell> predicate) {
    int[] found = axis.where(predicate).stream().toArray();
    if (found.length != 1) {
      throw new AssertionError(axis + " has cells " + Arrays.toString(found) + " for one value");
    }
    return found[0];
  }

  boolean holds(int diagram, int[] path) {
    int rest = diagram;
    for (int axis = 0; axis < path.length; axis++) {
      rest = diagrams.child(rest, axis, path[axis]);
    }
    return rest == Diagrams.ALL;
  }

  void seen(int[] path) {
    long key = 0;
    for (int axis = 0; axis < path.length; axis++) {
      key = key * axes.get(axis).cells().size() + path[axis];
    }
    seen.add(key);
  }

  int seenCount() {
    return seen.size();
  }
}
