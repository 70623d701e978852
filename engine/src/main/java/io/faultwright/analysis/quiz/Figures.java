package io.faultwright.analysis.quiz;

import io.faultwright.analysis.judge.Observed;
import io.faultwright.analysis.space.Axis;
import io.faultwright.analysis.space.Cell;
import io.faultwright.model.Band;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Domain;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Puts other figures into a situation without leaving its cells: what is proved of one is proved of
 * the other. No figure lies so close to a threshold or a limit that the instrument could not tell.
 */
final class Figures {
  private static final int TRIES = 24;
  private static final int ROUNDS = 4;
  private static final int MOST_CORNERS = 5;

  private final Ground ground;

  Figures(Ground ground) {
    this.ground = ground;
  }

  /**
   * Other figures for the readings that are shown.
   *
   * @param full a situation of the symptom
   * @param shown ids of the readings that get other figures
   * @return the whole situation; empty where no figures were found that an instrument can tell
   */
  Optional<Situation> vary(Situation full, List<String> shown, Dice dice) {
    for (int round = 0; round < ROUNDS; round++) {
      Situation varied = full;
      for (String reading : dice.shuffled(shown)) {
        varied = varied(varied, reading, dice);
      }
      if (isSteady(Ground.showing(varied, shown))) {
        return Optional.of(varied);
      }
    }
    return Optional.empty();
  }

  private Situation varied(Situation full, String reading, Dice dice) {
    if (!(full.readings().get(reading) instanceof Value.Number)) {
      return full;
    }
    List<Integer> axes = ground.touched(reading);
    Observed before = ground.observe(full);
    int[] cells = axes.stream().mapToInt(axis -> ground.cell(axis, before)).toArray();
    Plausible plausible = plausible(before, reading);
    return drawn(plausible, dice, value -> keeps(full, reading, value, axes, cells))
        .findFirst()
        .or(() -> nearest(plausible, reading, dice, v -> keeps(full, reading, v, axes, cells)))
        .map(value -> Ground.with(full, reading, new Value.Number(value)))
        .orElse(full);
  }

  private static Stream<BigFraction> drawn(
      Plausible plausible, Dice dice, Predicate<BigFraction> fits) {
    return Stream.generate(() -> plausible.draw(dice))
        .limit(TRIES)
        .flatMap(Optional::stream)
        .filter(fits);
  }

  /** Where what is plausible does not fit, that of the whole range which comes nearest to it. */
  private Optional<BigFraction> nearest(
      Plausible plausible, String reading, Dice dice, Predicate<BigFraction> fits) {
    return drawn(plausible.over(measured(reading).range()), dice, fits)
        .min(Comparator.comparing(plausible::away));
  }

  /** Whether a figure, and what its instrument could mean by it, leaves the cells as they were. */
  private boolean keeps(
      Situation full, String reading, BigFraction value, List<Integer> axes, int[] cells) {
    BigFraction off = tolerance(reading, value);
    return List.of(value, value.subtract(off), value.add(off)).stream()
        .allMatch(near -> sameCells(full, reading, clamped(reading, near), axes, cells));
  }

  private boolean sameCells(
      Situation full, String reading, BigFraction value, List<Integer> axes, int[] cells) {
    Observed observed = ground.observe(Ground.with(full, reading, new Value.Number(value)));
    for (int i = 0; i < cells.length; i++) {
      if (ground.cell(axes.get(i), observed) != cells[i]) {
        return false;
      }
    }
    return true;
  }

  private BigFraction tolerance(String reading, BigFraction value) {
    return ground.kb().readings().get(reading).tolerance(value).orElse(BigFraction.ZERO);
  }

  private BigFraction clamped(String reading, BigFraction value) {
    Interval range = measured(reading).range();
    BigFraction low = range.low().orElseThrow().value();
    BigFraction high = range.high().orElseThrow().value();
    return value.compareTo(low) < 0 ? low : value.compareTo(high) > 0 ? high : value;
  }

  private Domain.Measured measured(String reading) {
    return (Domain.Measured) ground.kb().readings().get(reading).domain();
  }

  /**
   * Which figures a person would expect for a reading that stays on its side and in its stretch.
   */
  private Plausible plausible(Observed observed, String reading) {
    Domain.Measured domain = measured(reading);
    Interval stretch =
        ground
            .space()
            .position(new Axis.OfReading(reading))
            .map(axis -> ground.space().axes().get(axis).cells().get(ground.cell(axis, observed)))
            .filter(Cell.Stretch.class::isInstance)
            .map(cell -> ((Cell.Stretch) cell).interval())
            .orElse(domain.range());
    Optional<Band> band =
        ground.space().position(new Axis.OfSide(reading)).flatMap(axis -> observed.band(reading));
    Optional<Side> side = band.flatMap(limits -> observed.amount(reading).map(limits::side));
    return Plausible.of(domain, stretch, band, side);
  }

  /** Whether no instrument could put what is shown into another cell. */
  boolean isSteady(Situation shown) {
    Observed observed = ground.observe(shown);
    for (int axis = 1; axis < ground.space().axes().size(); axis++) {
      int cell = ground.cell(axis, observed);
      if (cell >= 0 && !isSteady(axis, cell, shown)) {
        return false;
      }
    }
    return true;
  }

  private boolean isSteady(int axis, int cell, Situation shown) {
    SortedSet<String> doubtful = new TreeSet<>(ground.needs(axis));
    doubtful.removeIf(reading -> !isInexact(shown, reading));
    List<String> readings = doubtful.stream().limit(MOST_CORNERS).toList();
    for (int corner = 0; corner < 1 << readings.size() && !readings.isEmpty(); corner++) {
      Situation off = shown;
      for (int i = 0; i < readings.size(); i++) {
        off = shifted(off, readings.get(i), (corner >> i & 1) == 1);
      }
      if (ground.cell(axis, ground.observe(off)) != cell) {
        return false;
      }
    }
    return true;
  }

  private boolean isInexact(Situation shown, String reading) {
    return shown.readings().get(reading) instanceof Value.Number number
        && tolerance(reading, number.amount()).signum() > 0;
  }

  private Situation shifted(Situation shown, String reading, boolean up) {
    BigFraction value = ((Value.Number) shown.readings().get(reading)).amount();
    BigFraction off = tolerance(reading, value);
    BigFraction shifted = up ? value.add(off) : value.subtract(off);
    return Ground.with(shown, reading, new Value.Number(clamped(reading, shifted)));
  }
}
