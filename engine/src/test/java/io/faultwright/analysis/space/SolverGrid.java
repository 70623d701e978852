package io.faultwright.analysis.space;

import com.microsoft.z3.ArithExpr;
import com.microsoft.z3.BoolExpr;
import com.microsoft.z3.Context;
import com.microsoft.z3.RealSort;
import io.faultwright.analysis.space.SolverSpace.Place;
import io.faultwright.model.Build;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A table along two readings, as the language's document tells it: points, straight lines between
 * neighbours, and two triangles between four points, split from the low corner to the high one.
 */
final class SolverGrid {
  private final Context context;
  private final SolverSpace space;
  private final Map<List<BigFraction>, Row> points = new HashMap<>();
  private final SortedSet<BigFraction> columns = new TreeSet<>();
  private final SortedSet<BigFraction> lines = new TreeSet<>();

  SolverGrid(Context context, SolverSpace space, List<Row> rows) {
    this.context = context;
    this.space = space;
    for (Row row : rows) {
      BigFraction x = SolverSpace.start(row.at().get(0));
      BigFraction y = SolverSpace.start(row.at().get(1));
      points.put(List.of(x, y), row);
      columns.add(x);
      lines.add(y);
    }
  }

  List<Place> places(Build build, List<String> drivers) {
    ArithExpr<RealSort> x = space.value(drivers.get(0), build);
    ArithExpr<RealSort> y = space.value(drivers.get(1), build);
    List<Place> places = new ArrayList<>();
    for (BigFraction x0 : columns) {
      for (BigFraction y0 : lines) {
        Step right = step(x, x0, columns);
        Step up = step(y, y0, lines);
        Step noX = new Step(x, x0, x0);
        Step noY = new Step(y, y0, y0);
        for (List<Step> way :
            List.of(
                List.of(right, up), List.of(up, right), List.of(right, noY), List.of(up, noX))) {
          List<BigFraction> a = List.of(x0, y0);
          List<BigFraction> b = way.get(0) == right ? List.of(right.to, y0) : List.of(x0, up.to);
          List<BigFraction> c =
              List.of(way.contains(right) ? right.to : x0, way.contains(up) ? up.to : y0);
          place(List.of(a, b, c), way).ifPresent(places::add);
        }
      }
    }
    return places;
  }

  private Step step(ArithExpr<RealSort> at, BigFraction from, SortedSet<BigFraction> line) {
    return new Step(at, from, line.tailSet(from).stream().skip(1).findFirst().orElse(from));
  }

  /** From the first corner to the second by one step, to the third by the other. */
  private Optional<Place> place(List<List<BigFraction>> corners, List<Step> way) {
    if (!corners.stream().allMatch(points::containsKey)) {
      return Optional.empty();
    }
    ArithExpr<RealSort> first = way.get(0).part();
    ArithExpr<RealSort> second = way.get(1).part();
    BoolExpr here =
        context.mkAnd(
            way.get(0).isOn(),
            way.get(1).isOn(),
            way.get(1).to.equals(way.get(1).from) ? context.mkTrue() : context.mkLe(second, first));
    return Optional.of(
        new Place(
            here,
            figure(corners, Row::low, first, second),
            figure(corners, Row::high, first, second)));
  }

  private Optional<ArithExpr<RealSort>> figure(
      List<List<BigFraction>> corners,
      Function<Row, Optional<BigFraction>> limit,
      ArithExpr<RealSort> first,
      ArithExpr<RealSort> second) {
    List<BigFraction> figures =
        corners.stream().flatMap(corner -> limit.apply(points.get(corner)).stream()).toList();
    if (figures.size() < corners.size()) {
      return Optional.empty();
    }
    return Optional.of(
        context.mkAdd(
            space.number(figures.get(0)),
            context.mkMul(space.number(figures.get(1).subtract(figures.get(0))), first),
            context.mkMul(space.number(figures.get(2).subtract(figures.get(1))), second)));
  }

  /** A way along one driver between neighbouring lines of a table; from a line to itself none. */
  private final class Step {
    private final ArithExpr<RealSort> at;
    private final BigFraction from;
    private final BigFraction to;

    Step(ArithExpr<RealSort> at, BigFraction from, BigFraction to) {
      this.at = at;
      this.from = from;
      this.to = to;
    }

    /** How much of it is gone, from 0 to 1. */
    ArithExpr<RealSort> part() {
      return from.equals(to)
          ? space.number(BigFraction.ZERO)
          : context.mkDiv(context.mkSub(at, space.number(from)), space.number(to.subtract(from)));
    }

    BoolExpr isOn() {
      return space.inside(at, Interval.closed(from, to));
    }
  }
}
