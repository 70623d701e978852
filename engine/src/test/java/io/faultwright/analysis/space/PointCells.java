package io.faultwright.analysis.space;

import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Limits;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Reading;
import io.faultwright.model.Value;
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
      return place(of.reading(), observed);
    }
    return axis.subject() instanceof Axis.OfSide of
        ? side(of.reading(), build, observed)
        : cell -> ((Cell.Builds) cell).builds().contains(build);
  }

  private Predicate<Cell> place(String reading, Map<String, Value> observed) {
    Optional<Value> value = value(reading, observed);
    if (value.isPresent() && value.get() instanceof Value.Number number) {
      return cell -> cell instanceof Cell.Stretch at && at.interval().contains(number.amount());
    }
    return missing(value);
  }

  private static Predicate<Cell> missing(Optional<Value> value) {
    return value.isPresent() ? Cell.NotTaken.class::isInstance : Cell.Absent.class::isInstance;
  }

  /** Absent before not taken, not taken before a number. */
  private Optional<Value> value(String reading, Map<String, Value> observed) {
    Reading definition = knowledge.readings().get(reading);
    if (definition.derived().isEmpty()) {
      return Optional.ofNullable(observed.get(reading));
    }
    BigFraction sum = definition.derived().get().constant();
    boolean taken = true;
    for (String operand : definition.operands()) {
      Optional<Value> value = value(operand, observed);
      if (value.isEmpty()) {
        return value;
      }
      taken &= value.get() instanceof Value.Number;
      if (value.get() instanceof Value.Number number) {
        BigFraction factor = definition.derived().get().terms().get(operand);
        sum = sum.add(factor.multiply(number.amount()));
      }
    }
    return Optional.of(taken ? new Value.Number(sum) : new Value.NotTaken());
  }

  private Predicate<Cell> side(String reading, Build build, Map<String, Value> observed) {
    Optional<Value> value = value(reading, observed);
    LimitsTable table = knowledge.limits().get(reading);
    if (!(value.orElse(new Value.NotTaken()) instanceof Value.Number number)) {
      return missing(value);
    }
    List<BigFraction> drivers = new ArrayList<>();
    for (String id : table.drivers()) {
      Optional<Value> driver = value(id, observed);
      if (!(driver.orElse(new Value.NotTaken()) instanceof Value.Number at)) {
        return missing(driver);
      }
      drivers.add(at.amount());
    }
    return side(number, Limits.of(table, build).at(drivers));
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
