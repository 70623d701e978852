package io.faultwright.analysis.space;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Polyline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Linear inequalities over a few variables, some of which are read off curves at a linear form of
 * others. Decided exactly: bounds are carried from one statement to the next ({@link Bounds}), and
 * where they leave a doubt, a curve is split at one of its points, until each is straight and
 * {@link LinearSystem} decides.
 */
final class CurvedSystem {
  /**
   * A variable that is read off a curve.
   *
   * @param variable its number
   * @param curve the curve
   * @param argument where on the curve
   * @param reach the part of the curve in question
   */
  record Reading(int variable, Polyline curve, LinearForm argument, Interval reach) {
    Reading {
      if (argument.factor(variable).signum() != 0) {
        throw new IllegalArgumentException("a curve over its own value: " + argument);
      }
    }
  }

  private final LinearSystem linear;
  private final List<Reading> readings;
  private final Optional<Bounds> wider;
  private final Optional<List<BigFraction>> hint;
  private final Lazy<Optional<Bounds>> bounds = new Lazy<>(this::narrowed);
  private final Lazy<Optional<List<BigFraction>>> solution = new Lazy<>(this::solved);

  /**
   * @param wider bounds of a system that says less, to begin with
   * @param hint a solution of a system that says less, to be tried first
   */
  private CurvedSystem(
      LinearSystem linear,
      List<Reading> readings,
      Optional<Bounds> wider,
      Optional<List<BigFraction>> hint) {
    this.linear = linear;
    this.readings = readings;
    this.wider = wider;
    this.hint = hint;
  }

  /** Nothing said yet. */
  static CurvedSystem free(int variables) {
    return new CurvedSystem(
        LinearSystem.free(variables), List.of(), Optional.empty(), Optional.empty());
  }

  /** The system with a form kept inside an interval. */
  CurvedSystem with(LinearForm form, Interval interval) {
    return saying(linear.with(form, interval), readings);
  }

  /** A system that says more than this one. */
  private CurvedSystem saying(LinearSystem more, List<Reading> curves) {
    return new CurvedSystem(
        more,
        curves,
        bounds.ifKnown().flatMap(known -> known).or(() -> wider),
        solution.ifKnown().flatMap(known -> known).or(() -> hint));
  }

  /** The system in which a variable is read off a curve, in one part of it. */
  CurvedSystem with(Reading reading) {
    List<Reading> others = new ArrayList<>(readings);
    others.removeIf(other -> other.variable() == reading.variable());
    others.add(reading);
    return saying(linear.with(reading.argument(), reading.reach()), others);
  }

  /** Whether a variable is read off a curve. */
  boolean reads(int variable) {
    return readings.stream().anyMatch(reading -> reading.variable() == variable);
  }

  /** Whether values, one for each variable, satisfy everything. */
  boolean holds(List<BigFraction> values) {
    return linear.holds(values)
        && readings.stream()
            .allMatch(
                reading ->
                    reading
                        .curve()
                        .at(reading.argument().at(values))
                        .filter(value -> value.compareTo(values.get(reading.variable())) == 0)
                        .isPresent());
  }

  LinearSystem linear() {
    return linear;
  }

  List<Reading> readings() {
    return readings;
  }

  /** Whether some values of the variables satisfy everything. */
  boolean isSolvable() {
    return readings.isEmpty() ? linear.isSolvable() : solution().isPresent();
  }

  /** Values for every variable that satisfy everything; empty where there are none. */
  Optional<List<BigFraction>> solution() {
    return solution.get();
  }

  private Optional<Bounds> narrowed() {
    return Bounds.of(this, wider);
  }

  private Optional<List<BigFraction>> solved() {
    if (hint.filter(this::holds).isPresent()) {
      return hint;
    }
    Optional<Bounds> within = bounds.get();
    if (within.isEmpty()) {
      return Optional.empty();
    }
    Optional<List<BigFraction>> guess = within.get().guess().filter(this::holds);
    if (guess.isPresent()) {
      return guess;
    }
    Optional<Reading> bent = mostBent(within.get());
    if (bent.isEmpty()) {
      return straight(within.get()).point();
    }
    return around(within.get()).isSolvable() ? split(bent.get(), within.get()) : Optional.empty();
  }

  /** The system within bounds in which every curve may lie anywhere between two straight lines. */
  private LinearSystem around(Bounds bounds) {
    LinearSystem all = linear;
    for (Reading reading : readings) {
      Strip strip = Strip.around(reading.curve(), bounds.reach(reading));
      LinearForm variable = LinearForm.variable(linear.variables(), reading.variable());
      LinearForm line = reading.argument().times(strip.slope());
      all =
          all.with(reading.argument(), bounds.reach(reading))
              .with(variable.minus(line), strip.between());
    }
    return all;
  }

  /**
   * Values of a form over all solutions: exactly these where nothing is curved, else an interval
   * that holds them all. Empty where there is no solution, or none was ruled out by bounds alone.
   */
  Optional<Interval> image(LinearForm form) {
    return readings.isEmpty() ? linear.image(form) : bounds.get().map(all -> all.of(form));
  }

  /** The reading whose curve has the most points left inside its bounds. */
  private Optional<Reading> mostBent(Bounds bounds) {
    Optional<Reading> most = Optional.empty();
    int pieces = 1;
    for (Reading reading : readings) {
      int now = bounds.pieces(reading);
      if (now > pieces) {
        pieces = now;
        most = Optional.of(reading);
      }
    }
    return most;
  }

  private Optional<List<BigFraction>> split(Reading reading, Bounds bounds) {
    BigFraction at = bounds.middlePoint(reading);
    Optional<List<BigFraction>> below = within(reading, Interval.atMost(at)).solution();
    return below.isPresent() ? below : within(reading, Interval.atLeast(at)).solution();
  }

  private CurvedSystem within(Reading reading, Interval part) {
    Interval reach = Stretches.intersection(reading.reach(), part).orElseThrow();
    return with(new Reading(reading.variable(), reading.curve(), reading.argument(), reach));
  }

  /** The system within bounds in which every curve is straight. */
  private LinearSystem straight(Bounds bounds) {
    LinearSystem all = linear;
    for (Reading reading : readings) {
      int piece = bounds.piece(reading);
      Polyline curve = reading.curve();
      Interval reach =
          Interval.closed(curve.knots().get(piece).x(), curve.knots().get(piece + 1).x());
      LinearForm line =
          reading.argument().times(curve.slope(piece)).plus(curve.along(piece, BigFraction.ZERO));
      LinearForm variable =
          LinearForm.variable(reading.argument().factors().size(), reading.variable());
      all =
          all.with(reading.argument(), reach)
              .with(variable.minus(line), Interval.point(BigFraction.ZERO));
    }
    return all;
  }
}
