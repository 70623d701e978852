package io.faultwright.analysis.space;

import com.microsoft.z3.ArithExpr;
import com.microsoft.z3.BoolExpr;
import com.microsoft.z3.Context;
import com.microsoft.z3.RealSort;
import io.faultwright.model.Bend;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.model.Reading;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.quantity.Polyline;
import io.faultwright.quantity.Polyline.Knot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** Cells as statements of real arithmetic, written straight from readings and rows of limits. */
final class SolverSpace {
  private final Context context;
  private final Space space;
  private final KnowledgeBase knowledge;
  private final Map<List<Integer>, BoolExpr> known = new HashMap<>();

  SolverSpace(Context context, Space space) {
    this.context = context;
    this.space = space;
    this.knowledge = space.knowledge();
  }

  /** Whether every reading has a number on a path, and exists there. */
  boolean speaksOf(int[] path) {
    for (int axis = 0; axis < path.length; axis++) {
      Cell cell = space.axes().get(axis).cells().get(path[axis]);
      if (cell instanceof Cell.NotTaken
          || cell instanceof Cell.Absent
          || space.axes().get(axis).subject() instanceof Axis.OfReading of
              && !build(path).satisfies(knowledge.readings().get(of.reading()).applies())) {
        return false;
      }
    }
    return true;
  }

  private Build build(int[] path) {
    return ((Cell.Builds) space.axes().get(0).cells().get(path[0])).representative();
  }

  /** That a point lies in the cells of a path. */
  BoolExpr point(int[] path) {
    BoolExpr[] parts = new BoolExpr[path.length];
    parts[0] = ranges(build(path));
    for (int axis = 1; axis < path.length; axis++) {
      int position = axis;
      parts[axis] =
          known.computeIfAbsent(List.of(path[0], axis, path[axis]), key -> inCell(position, path));
    }
    return context.mkAnd(parts);
  }

  private BoolExpr ranges(Build build) {
    BoolExpr all = context.mkTrue();
    for (Map.Entry<String, Reading> reading : knowledge.readings().entrySet()) {
      Domain.Measured domain = (Domain.Measured) reading.getValue().domain();
      if (reading.getValue().derived().isEmpty()) {
        all = context.mkAnd(all, inside(value(reading.getKey(), build), domain.range()));
      }
    }
    return all;
  }

  private BoolExpr inCell(int axis, int[] path) {
    Axis.Subject subject = space.axes().get(axis).subject();
    Cell cell = space.axes().get(axis).cells().get(path[axis]);
    return subject instanceof Axis.OfReading of
        ? context.mkAnd(
            onCurves(of.reading(), build(path)),
            inside(value(of.reading(), build(path)), ((Cell.Stretch) cell).interval()))
        : judged(((Axis.OfSide) subject).reading(), cell, build(path));
  }

  ArithExpr<RealSort> value(String reading, Build build) {
    return knowledge
        .readings()
        .get(reading)
        .derived()
        .map(form -> sum(form, build))
        .orElseGet(() -> context.mkRealConst(reading));
  }

  private ArithExpr<RealSort> sum(Derived form, Build build) {
    ArithExpr<RealSort> sum = number(form.constant());
    for (Map.Entry<String, BigFraction> term : form.terms().entrySet()) {
      ArithExpr<RealSort> operand = value(term.getKey(), build);
      sum = context.mkAdd(sum, context.mkMul(number(term.getValue()), operand));
    }
    for (Bend bend : form.bends()) {
      ArithExpr<RealSort> height = height(curve(bend, build), sum(bend.argument(), build));
      sum = context.mkAdd(sum, context.mkMul(number(bend.factor()), height));
    }
    return sum;
  }

  private static Polyline curve(Bend bend, Build build) {
    return bend.curve().on(build.model().refrigerant()).orElseThrow();
  }

  /** One straight piece after the other. */
  @SuppressWarnings("unchecked") // the solver gives back an expression of some sort
  private ArithExpr<RealSort> height(Polyline curve, ArithExpr<RealSort> x) {
    ArithExpr<RealSort> height = number(BigFraction.ZERO);
    for (int i = curve.knots().size() - 2; i >= 0; i--) {
      Knot from = curve.knots().get(i);
      Knot to = curve.knots().get(i + 1);
      BigFraction slope = to.y().subtract(from.y()).divide(to.x().subtract(from.x()));
      ArithExpr<RealSort> piece =
          context.mkAdd(
              number(from.y()), context.mkMul(number(slope), context.mkSub(x, number(from.x()))));
      height = (ArithExpr<RealSort>) context.mkITE(context.mkLe(x, number(to.x())), piece, height);
    }
    return height;
  }

  /** That a reading lies where all its curves have a height. */
  private BoolExpr onCurves(String reading, Build build) {
    BoolExpr all = context.mkTrue();
    for (Derived form : knowledge.readings().get(reading).derived().stream().toList()) {
      for (String operand : form.operands()) {
        all = context.mkAnd(all, onCurves(operand, build));
      }
      for (Bend bend : form.bends()) {
        Interval known =
            Interval.closed(
                curve(bend, build).knots().get(0).x(),
                curve(bend, build).knots().get(curve(bend, build).knots().size() - 1).x());
        all = context.mkAnd(all, inside(sum(bend.argument(), build), known));
      }
    }
    return all;
  }

  ArithExpr<RealSort> number(BigFraction value) {
    String size = value.getNumerator().abs() + "/" + value.getDenominator().abs();
    return context.mkReal((value.signum() < 0 ? "-" : "") + size);
  }

  BoolExpr inside(ArithExpr<RealSort> value, Interval interval) {
    BoolExpr low = interval.low().map(end -> above(value, end)).orElse(context.mkTrue());
    BoolExpr high = interval.high().map(end -> below(value, end)).orElse(context.mkTrue());
    return context.mkAnd(low, high);
  }

  private BoolExpr above(ArithExpr<RealSort> value, End end) {
    return end.included()
        ? context.mkGe(value, number(end.value()))
        : context.mkGt(value, number(end.value()));
  }

  private BoolExpr below(ArithExpr<RealSort> value, End end) {
    return end.included()
        ? context.mkLe(value, number(end.value()))
        : context.mkLt(value, number(end.value()));
  }

  /** That one of the places where the table speaks makes the side what it is, or that none does. */
  private BoolExpr judged(String reading, Cell cell, Build build) {
    List<Place> places = places(knowledge.limits().get(reading), build);
    BoolExpr any = context.mkFalse();
    BoolExpr none = context.mkTrue();
    for (Place place : places) {
      none = context.mkAnd(none, context.mkNot(place.here()));
      if (cell instanceof Cell.SideOf at) {
        any =
            context.mkOr(
                any, context.mkAnd(place.here(), side(value(reading, build), place, at.side())));
      }
    }
    return cell instanceof Cell.NoFigure ? none : any;
  }

  private BoolExpr side(ArithExpr<RealSort> value, Place place, Side side) {
    BoolExpr isBelow = place.low().map(low -> context.mkLt(value, low)).orElse(context.mkFalse());
    BoolExpr isAbove =
        place.high().map(high -> context.mkGt(value, high)).orElse(context.mkFalse());
    return switch (side) {
      case BELOW -> isBelow;
      case ABOVE -> isAbove;
      case WITHIN -> context.mkAnd(context.mkNot(isBelow), context.mkNot(isAbove));
    };
  }

  /** Where a table speaks, and the limits there. */
  record Place(
      BoolExpr here, Optional<ArithExpr<RealSort>> low, Optional<ArithExpr<RealSort>> high) {}

  private List<Place> places(LimitsTable table, Build build) {
    List<Row> rows =
        table.rows().stream()
            .filter(row -> build.satisfies(row.builds()))
            .sorted(
                Comparator.comparing(
                    row ->
                        row.at().stream()
                            .findFirst()
                            .map(SolverSpace::start)
                            .orElse(BigFraction.ZERO)))
            .toList();
    if (table.drivers().isEmpty()) {
      return rows.stream()
          .map(
              row ->
                  new Place(
                      context.mkTrue(), row.low().map(this::number), row.high().map(this::number)))
          .toList();
    }
    if (table.drivers().size() > 1) {
      return new SolverGrid(context, this, rows).places(build, table.drivers());
    }
    ArithExpr<RealSort> driver = value(table.drivers().get(0), build);
    return table.between().equals(Optional.of(Between.STEP))
        ? steps(rows, driver)
        : lines(rows, driver);
  }

  /** An end that two rows share belongs to the row that starts there. */
  private List<Place> steps(List<Row> rows, ArithExpr<RealSort> driver) {
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      BoolExpr here = inside(driver, row.at().get(0));
      if (i + 1 < rows.size()) {
        BigFraction next = start(rows.get(i + 1).at().get(0));
        here = context.mkAnd(here, context.mkLt(driver, number(next)));
      }
      places.add(new Place(here, row.low().map(this::number), row.high().map(this::number)));
    }
    return places;
  }

  private List<Place> lines(List<Row> rows, ArithExpr<RealSort> driver) {
    List<Place> places = new ArrayList<>();
    for (int i = 0; i + 1 < rows.size(); i++) {
      Row from = rows.get(i);
      Row to = rows.get(i + 1);
      Interval between = Interval.closed(start(from.at().get(0)), start(to.at().get(0)));
      places.add(
          new Place(
              inside(driver, between),
              line(from, to, Row::low, driver),
              line(from, to, Row::high, driver)));
    }
    return places;
  }

  private Optional<ArithExpr<RealSort>> line(
      Row from, Row to, Function<Row, Optional<BigFraction>> limit, ArithExpr<RealSort> driver) {
    BigFraction start = start(from.at().get(0));
    BigFraction width = start(to.at().get(0)).subtract(start);
    return limit
        .apply(from)
        .flatMap(
            low ->
                limit
                    .apply(to)
                    .map(
                        high ->
                            context.mkAdd(
                                number(low),
                                context.mkMul(
                                    number(high.subtract(low).divide(width)),
                                    context.mkSub(driver, number(start))))));
  }

  static BigFraction start(Interval at) {
    return at.low().orElseThrow().value();
  }
}
