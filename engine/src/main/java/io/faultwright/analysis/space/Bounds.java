package io.faultwright.analysis.space;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.quantity.Polyline;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An interval for each variable of a system that holds its every solution. Bounds are carried from
 * statement to statement until nothing changes, or for some rounds; on statements that form a tree
 * they are exact (Faltings, "Arc-consistency for continuous variables", Artificial Intelligence 65,
 * 1994).
 */
final class Bounds {
  private static final int MOST_ROUNDS = 8;

  private final CurvedSystem system;
  private final Interval[] intervals;
  private boolean changed;
  private boolean empty;

  private Bounds(CurvedSystem system, Interval[] intervals) {
    this.system = system;
    this.intervals = intervals;
  }

  /** The bounds of a system; empty where they show that it has no solution. */
  static Optional<Bounds> of(CurvedSystem system) {
    Interval[] free = new Interval[system.linear().variables()];
    Arrays.fill(free, new Interval(Optional.empty(), Optional.empty()));
    return new Bounds(system, free).narrowed();
  }

  private Optional<Bounds> narrowed() {
    if (system.linear().isContradictory()) {
      return Optional.empty();
    }
    changed = true;
    for (int round = 0; round < MOST_ROUNDS && changed && !empty; round++) {
      changed = false;
      system.linear().statements().forEach(this::heed);
      system.readings().forEach(this::heed);
    }
    return empty ? Optional.empty() : Optional.of(this);
  }

  /** Each variable of a statement from the bounds of the others. */
  private void heed(LinearSystem.AtMostZero statement) {
    LinearForm form = statement.form();
    form.variables().forEach(variable -> heed(statement, form, variable));
  }

  private void heed(LinearSystem.AtMostZero statement, LinearForm form, int variable) {
    LinearForm rest = form.with(variable, LinearForm.constant(intervals.length, BigFraction.ZERO));
    Optional<End> low = of(rest).low();
    if (low.isPresent()) {
      BigFraction factor = form.factor(variable);
      boolean included = low.get().included() && !statement.strict();
      Optional<End> end = Optional.of(new End(low.get().value().negate().divide(factor), included));
      narrow(
          variable,
          factor.signum() > 0
              ? new Interval(Optional.empty(), end)
              : new Interval(end, Optional.empty()));
    }
  }

  /** A curve's value from its argument, and the argument from the value. */
  private void heed(CurvedSystem.Reading reading) {
    Optional<Interval> reach = Stretches.intersection(of(reading.argument()), reading.reach());
    if (reach.isEmpty()) {
      empty = true;
      return;
    }
    narrow(reading.variable(), along(reading.curve(), reach.get()));
    Optional<Interval> values =
        Stretches.intersection(intervals[reading.variable()], reading.curve().image());
    if (values.isEmpty()) {
      empty = true;
    } else {
      back(reading, values.get());
    }
  }

  private void back(CurvedSystem.Reading reading, Interval values) {
    Interval argument = inverse(reading.curve(), values);
    LinearForm form = reading.argument();
    argument
        .high()
        .ifPresent(
            end ->
                heed(
                    new LinearSystem.AtMostZero(form.plus(end.value().negate()), !end.included())));
    argument
        .low()
        .ifPresent(
            end ->
                heed(
                    new LinearSystem.AtMostZero(
                        form.negated().plus(end.value()), !end.included())));
  }

  private static Interval along(Polyline curve, Interval reach) {
    Optional<End> from = reach.low().map(end -> at(curve.at(end.value()), end));
    Optional<End> to = reach.high().map(end -> at(curve.at(end.value()), end));
    return curve.rising() ? new Interval(from, to) : new Interval(to, from);
  }

  private static Interval inverse(Polyline curve, Interval values) {
    Optional<End> from = values.low().map(end -> at(curve.inverse(end.value()), end));
    Optional<End> to = values.high().map(end -> at(curve.inverse(end.value()), end));
    return curve.rising() ? new Interval(from, to) : new Interval(to, from);
  }

  private static End at(Optional<BigFraction> value, End like) {
    return new End(value.orElseThrow(), like.included());
  }

  private void narrow(int variable, Interval to) {
    Optional<Interval> both = Stretches.intersection(intervals[variable], to);
    if (both.isEmpty()) {
      empty = true;
    } else if (!both.get().equals(intervals[variable])) {
      intervals[variable] = both.get();
      changed = true;
    }
  }

  /** Every value that a form can have within the bounds. */
  Interval of(LinearForm form) {
    return new Interval(end(form, true), end(form, false));
  }

  private Optional<End> end(LinearForm form, boolean low) {
    BigFraction sum = form.constant();
    boolean included = true;
    for (int variable : form.variables().toArray()) {
      boolean rising = form.factor(variable).signum() > 0;
      Interval interval = intervals[variable];
      Optional<End> end = rising == low ? interval.low() : interval.high();
      if (end.isEmpty()) {
        return Optional.empty();
      }
      sum = sum.add(form.factor(variable).multiply(end.get().value()));
      included &= end.get().included();
    }
    return Optional.of(new End(sum, included));
  }

  /** Number of straight pieces that a curve has within the bounds. */
  int pieces(CurvedSystem.Reading reading) {
    return last(reading) - piece(reading) + 1;
  }

  /** Number of the first straight piece within the bounds. */
  int piece(CurvedSystem.Reading reading) {
    return reading.curve().segment(reach(reading).low().orElseThrow().value());
  }

  private int last(CurvedSystem.Reading reading) {
    BigFraction end = reach(reading).high().orElseThrow().value();
    int segment = reading.curve().segment(end);
    boolean begins = reading.curve().knots().get(segment).x().compareTo(end) == 0;
    return begins && segment > piece(reading) ? segment - 1 : segment;
  }

  private Interval reach(CurvedSystem.Reading reading) {
    return Stretches.intersection(of(reading.argument()), reading.reach()).orElseThrow();
  }

  /** A point of the curve near the middle of its pieces within the bounds. */
  BigFraction middlePoint(CurvedSystem.Reading reading) {
    int middle = (piece(reading) + last(reading) + 1) / 2;
    return reading.curve().knots().get(middle).x();
  }

  /** Tries the middle of what is left for one variable after the other. */
  Optional<List<BigFraction>> guess(CurvedSystem whole) {
    CurvedSystem chosen = whole;
    List<BigFraction> values = new ArrayList<>();
    for (int variable = 0; variable < intervals.length; variable++) {
      Optional<Bounds> left = Bounds.of(chosen);
      if (left.isEmpty()) {
        return Optional.empty();
      }
      BigFraction value = RoundNumber.anywhere(left.get().intervals[variable]);
      values.add(value);
      chosen = chosen.with(LinearForm.variable(intervals.length, variable), Interval.point(value));
    }
    return whole.holds(values) ? Optional.of(values) : Optional.empty();
  }
}
