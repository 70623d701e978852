package io.faultwright.analysis.space;

import io.faultwright.model.Band;
import io.faultwright.model.Bend;
import io.faultwright.model.Build;
import io.faultwright.model.Derived;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Limits;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Reading;
import io.faultwright.model.Value;
import io.faultwright.quantity.Polyline;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** In which cells one point lies, judged directly by readings and limits tables. */
final class PointCells {
  private final Space space;
  private final KnowledgeBase knowledge;

  PointCells(Space space) {
    this.space = space;
    this.knowledge = space.knowledge();
  }

  /**
   * The cell on every axis.
   *
   * @param observed values of observed readings; one that is not listed does not exist
   */
  int[] of(Build build, Map<String, Value> observed) {
    return space.axes().stream()
        .mapToInt(axis -> only(axis, wanted(axis, build, observed)))
        .toArray();
  }

  private Predicate<Cell> wanted(Axis axis, Build build, Map<String, Value> observed) {
    if (axis.subject() instanceof Axis.OfReading of) {
      return place(of.reading(), build, observed);
    }
    return axis.subject() instanceof Axis.OfSide of
        ? side(of.reading(), build, observed)
        : cell -> ((Cell.Builds) cell).builds().contains(build);
  }

  private Predicate<Cell> place(String reading, Build build, Map<String, Value> observed) {
    Optional<Value> value = value(reading, build, observed);
    if (value.isPresent() && value.get() instanceof Value.Number number) {
      return cell -> cell instanceof Cell.Stretch at && at.interval().contains(number.amount());
    }
    return missing(value);
  }

  private static Predicate<Cell> missing(Optional<Value> value) {
    return value.isPresent() ? Cell.NotTaken.class::isInstance : Cell.Absent.class::isInstance;
  }

  /** Absent before not taken, not taken before a number; not taken too beyond a curve. */
  private Optional<Value> value(String reading, Build build, Map<String, Value> observed) {
    Reading definition = knowledge.readings().get(reading);
    if (definition.derived().isEmpty()) {
      return Optional.ofNullable(observed.get(reading));
    }
    List<Optional<Value>> operands =
        definition.operands().stream().map(id -> value(id, build, observed)).toList();
    if (operands.stream().anyMatch(Optional::isEmpty)) {
      return Optional.empty();
    }
    Optional<BigFraction> amount = sum(definition.derived().get(), build, observed);
    return Optional.of(amount.<Value>map(Value.Number::new).orElse(new Value.NotTaken()));
  }

  /** Straight from the definition: terms, points on curves, constant. */
  private Optional<BigFraction> sum(Derived form, Build build, Map<String, Value> observed) {
    BigFraction sum = form.constant();
    for (Map.Entry<String, BigFraction> term : form.terms().entrySet()) {
      if (!(value(term.getKey(), build, observed).orElseThrow() instanceof Value.Number number)) {
        return Optional.empty();
      }
      sum = sum.add(term.getValue().multiply(number.amount()));
    }
    for (Bend bend : form.bends()) {
      Optional<BigFraction> at = sum(bend.argument(), build, observed);
      Optional<BigFraction> onCurve =
          at.flatMap(x -> height(bend.curve().on(build.model().refrigerant()).orElseThrow(), x));
      if (onCurve.isEmpty()) {
        return Optional.empty();
      }
      sum = sum.add(bend.factor().multiply(onCurve.get()));
    }
    return Optional.of(sum);
  }

  private static Optional<BigFraction> height(Polyline curve, BigFraction x) {
    for (int i = 0; i + 1 < curve.knots().size(); i++) {
      Polyline.Knot from = curve.knots().get(i);
      Polyline.Knot to = curve.knots().get(i + 1);
      if (from.x().compareTo(x) <= 0 && x.compareTo(to.x()) <= 0) {
        BigFraction part = x.subtract(from.x()).divide(to.x().subtract(from.x()));
        return Optional.of(from.y().add(to.y().subtract(from.y()).multiply(part)));
      }
    }
    return Optional.empty();
  }

  private Predicate<Cell> side(String reading, Build build, Map<String, Value> observed) {
    Optional<Value> value = value(reading, build, observed);
    LimitsTable table = knowledge.limits().get(reading);
    if (!(value.orElse(new Value.NotTaken()) instanceof Value.Number number)) {
      return missing(value);
    }
    List<BigFraction> drivers = new ArrayList<>();
    for (String id : table.drivers()) {
      Optional<Value> driver = value(id, build, observed);
      if (driver.isEmpty()) {
        return missing(driver);
      }
      driver
          .filter(Value.Number.class::isInstance)
          .ifPresent(at -> drivers.add(((Value.Number) at).amount()));
    }
    return drivers.size() < table.drivers().size()
        ? missing(Optional.of(new Value.NotTaken()))
        : side(number, Limits.of(table, build).at(drivers));
  }

  private static Predicate<Cell> side(Value.Number number, Optional<Band> band) {
    return band.isEmpty()
        ? Cell.NoFigure.class::isInstance
        : cell -> cell instanceof Cell.SideOf at && at.side() == band.get().side(number.amount());
  }

  private static int only(Axis axis, Predicate<Cell> predicate) {
    int[] found = axis.where(predicate).stream().toArray();
    if (found.length != 1) {
      throw new AssertionError(found.length + " cells for one value on " + axis);
    }
    return found[0];
  }
}
