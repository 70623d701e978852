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

  /**
   * The bounds of a system; empty where they show that it has no solution.
   *
   * @param wider bounds that surely hold its solutions
   */
  static Optional<Bounds> of(CurvedSystem system, Optional<Bounds> wider) {
    Interval[] start = new Interval[system.linear().variables()];
    Arrays.fill(start, new Interval(Optional.empty(), Optional.empty()));
    return new Bounds(system, wider.map(known -> known.intervals.clone()).orElse(start)).narrowed();
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

  /** Each variable of a statement from the least that the others add up to. */
  private void heed(LinearSystem.AtMostZero statement) {
    LinearForm form = statement.form();
    BigFraction least = form.constant();
    int excluded = 0;
    int open = 0;
    for (int variable = 0; variable < intervals.length && open < 2; variable++) {
      if (form.factor(variable).signum() != 0) {
        Optional<End> end = least(form, variable);
        open += end.isEmpty() ? 1 : 0;
        excluded += end.isPresent() && !end.get().included() ? 1 : 0;
        least =
            end.isEmpty() ? least : least.add(form.factor(variable).multiply(end.get().value()));
      }
    }
    for (int variable = 0; variable < intervals.length && open < 2 && !empty; variable++) {
      boolean bound = open == 0 || least(form, variable).isEmpty();
      if (form.factor(variable).signum() != 0 && bound) {
        heed(statement, variable, least, excluded);
      }
    }
  }

  /** The end at which a variable adds the least. */
  private Optional<End> least(LinearForm form, int variable) {
    Interval interval = intervals[variable];
    return form.factor(variable).signum() > 0 ? interval.low() : interval.high();
  }

  /**
   * One variable of a statement.
   *
   * @param least what all bounded variables add up to at least
   * @param excluded how many of them do not reach their end
   */
  private void heed(
      LinearSystem.AtMostZero statement, int variable, BigFraction least, int excluded) {
    BigFraction factor = statement.form().factor(variable);
    Optional<End> own = least(statement.form(), variable);
    BigFraction rest = own.map(end -> least.subtract(factor.multiply(end.value()))).orElse(least);
    int others = excluded - (own.filter(end -> !end.included()).isPresent() ? 1 : 0);
    boolean included = others == 0 && !statement.strict();
    Optional<End> end = Optional.of(new End(rest.negate().divide(factor), included));
    narrow(
        variable,
        factor.signum() > 0
            ? new Interval(Optional.empty(), end)
            : new Interval(end, Optional.empty()));
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
    for (int variable = 0; variable < intervals.length; variable++) {
      if (form.factor(variable).signum() == 0) {
        continue;
      }
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

  /** The part of a curve within the bounds. */
  Interval reach(CurvedSystem.Reading reading) {
    return Stretches.intersection(of(reading.argument()), reading.reach()).orElseThrow();
  }

  /** A point of the curve near the middle of its pieces within the bounds. */
  BigFraction middlePoint(CurvedSystem.Reading reading) {
    int middle = (piece(reading) + last(reading) + 1) / 2;
    return reading.curve().knots().get(middle).x();
  }

  /** A round value for one variable after the other out of what is left for it. */
  Optional<List<BigFraction>> guess() {
    List<BigFraction> values = new ArrayList<>();
    Optional<Bounds> left = Optional.of(this);
    for (int variable = 0; variable < intervals.length && left.isPresent(); variable++) {
      BigFraction value = RoundNumber.anywhere(left.get().intervals[variable]);
      values.add(value);
      left = left.get().with(variable, value);
    }
    return left.map(all -> values);
  }

  private Optional<Bounds> with(int variable, BigFraction value) {
    Bounds next = new Bounds(system, intervals.clone());
    next.intervals[variable] = Interval.point(value);
    return next.narrowed();
  }
}
