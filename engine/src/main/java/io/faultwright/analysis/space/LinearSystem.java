package io.faultwright.analysis.space;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Linear inequalities over a few rational variables, strict ones among them, decided exactly by
 * Fourier-Motzkin elimination (after Fourier, 1826; Schrijver, "Theory of Linear and Integer
 * Programming", 1986, section 12.2).
 */
final class LinearSystem {
  private final int variables;
  private final Map<List<BigFraction>, AtMostZero> rows;

  /**
   * The statement that a form is at most zero.
   *
   * @param strict whether it has to be below zero
   */
  record AtMostZero(LinearForm form, boolean strict) {
    /** The same statement with the first factor that matters at 1 or -1, to be compared. */
    AtMostZero normal() {
      BigFraction first = form.factor(form.variables().findFirst().orElseThrow());
      BigFraction size = first.signum() < 0 ? first.negate() : first;
      return size.equals(BigFraction.ONE) ? this : new AtMostZero(over(size), strict);
    }

    private LinearForm over(BigFraction size) {
      return form.times(size.reciprocal());
    }

    boolean holds(List<BigFraction> values) {
      return form.at(values).signum() < (strict ? 0 : 1);
    }

    boolean speaksOfVariables() {
      return form.variables().findFirst().isPresent();
    }

    /** Whether a statement about numbers alone is true. */
    boolean isTrue() {
      return form.constant().signum() < (strict ? 0 : 1);
    }

    AtMostZero with(int variable, LinearForm replacement) {
      return new AtMostZero(form.with(variable, replacement), strict);
    }

    /** What this, with a positive factor, and another with a negative one say without it. */
    AtMostZero without(int variable, AtMostZero other) {
      LinearForm mine = form.times(other.form.factor(variable).negate());
      LinearForm theirs = other.form.times(form.factor(variable));
      return new AtMostZero(mine.plus(theirs), strict || other.strict);
    }
  }

  private LinearSystem(int variables, Map<List<BigFraction>, AtMostZero> rows) {
    this.variables = variables;
    this.rows = rows;
  }

  /** No inequality yet. */
  static LinearSystem free(int variables) {
    return new LinearSystem(variables, Map.of());
  }

  /** The system with a form kept inside an interval. */
  LinearSystem with(LinearForm form, Interval interval) {
    Rows added = new Rows(rows);
    interval.low().ifPresent(end -> added.add(above(form, end)));
    interval.high().ifPresent(end -> added.add(below(form, end)));
    return added.system(variables);
  }

  private static AtMostZero above(LinearForm form, End end) {
    return new AtMostZero(form.negated().plus(end.value()), !end.included());
  }

  private static AtMostZero below(LinearForm form, End end) {
    return new AtMostZero(form.plus(end.value().negate()), !end.included());
  }

  int variables() {
    return variables;
  }

  /** Every inequality, none implied by a parallel one. */
  Collection<AtMostZero> statements() {
    return Collections.unmodifiableCollection(rows.values());
  }

  /** Whether values, one for each variable, satisfy every inequality. */
  boolean holds(List<BigFraction> values) {
    return rows.values().stream().allMatch(row -> row.holds(values));
  }

  /** Values that satisfy every inequality, round ones; empty where there are none. */
  Optional<List<BigFraction>> point() {
    LinearSystem left = this;
    List<BigFraction> values = new ArrayList<>();
    for (int variable = 0; variable < variables; variable++) {
      LinearForm form = LinearForm.variable(variables, variable);
      Optional<Interval> image = left.image(form);
      if (image.isEmpty()) {
        return Optional.empty();
      }
      BigFraction value = RoundNumber.anywhere(image.get());
      values.add(value);
      left = left.with(form, Interval.point(value));
    }
    return Optional.of(values);
  }

  /** Whether some values of the variables satisfy every inequality. */
  boolean isSolvable() {
    return image(LinearForm.variable(variables, 0)).isPresent();
  }

  /** Exactly the values of a form over all solutions; empty where there is no solution. */
  Optional<Interval> image(LinearForm form) {
    Optional<Integer> pivot = form.variables().boxed().findFirst();
    if (pivot.isEmpty()) {
      return Optional.of(Interval.point(form.constant())).filter(value -> isSolvable());
    }
    LinearForm asValue = solvedFor(pivot.get(), form);
    Rows seen = new Rows(List.of());
    rows.values().forEach(row -> seen.add(row.with(pivot.get(), asValue)));
    LinearSystem left = seen.system(variables);
    while (!left.isContradictory() && left.next(pivot.get()).isPresent()) {
      left = left.without(left.next(pivot.get()).get());
    }
    return left.isContradictory() ? Optional.empty() : left.bounds(pivot.get());
  }

  /** The pivot expressed by the other variables and the form's value, which takes its number. */
  private LinearForm solvedFor(int pivot, LinearForm form) {
    LinearForm value = LinearForm.variable(variables, pivot);
    LinearForm rest = form.with(pivot, LinearForm.constant(variables, BigFraction.ZERO));
    return value.minus(rest).times(form.factor(pivot).reciprocal());
  }

  /** Another variable than the one kept, the cheapest to eliminate first. */
  private Optional<Integer> next(int kept) {
    return IntStream.range(0, variables)
        .boxed()
        .filter(variable -> variable != kept)
        .filter(variable -> with(variable, 1) + with(variable, -1) > 0)
        .min(Comparator.comparing(variable -> with(variable, 1) * with(variable, -1)));
  }

  private long with(int variable, int sign) {
    return rows.values().stream()
        .filter(row -> row.form().factor(variable).signum() == sign)
        .count();
  }

  private LinearSystem without(int variable) {
    Rows left = new Rows(List.of());
    List<AtMostZero> upper = new ArrayList<>();
    List<AtMostZero> lower = new ArrayList<>();
    for (AtMostZero row : rows.values()) {
      int sign = row.form().factor(variable).signum();
      if (sign == 0) {
        left.add(row);
      } else {
        (sign > 0 ? upper : lower).add(row);
      }
    }
    upper.forEach(high -> lower.forEach(low -> left.add(high.without(variable, low))));
    return left.system(variables);
  }

  /** Whether it says something about numbers alone that is not so. */
  boolean isContradictory() {
    return rows.containsKey(Rows.CONTRADICTION);
  }

  /** The interval that rows about one variable alone leave; empty where they leave nothing. */
  private Optional<Interval> bounds(int variable) {
    Optional<Interval> left = Optional.of(new Interval(Optional.empty(), Optional.empty()));
    for (AtMostZero row : rows.values()) {
      left = left.flatMap(interval -> Stretches.intersection(interval, bound(row, variable)));
    }
    return left;
  }

  private static Interval bound(AtMostZero row, int variable) {
    BigFraction factor = row.form().factor(variable);
    Optional<End> end =
        Optional.of(new End(row.form().constant().negate().divide(factor), !row.strict()));
    return factor.signum() > 0
        ? new Interval(Optional.empty(), end)
        : new Interval(end, Optional.empty());
  }

  /** Collects statements, of parallel ones the tightest, none that is always true. */
  private static final class Rows {
    static final List<BigFraction> CONTRADICTION = List.of();

    private final Map<List<BigFraction>, AtMostZero> tightest = new LinkedHashMap<>();

    Rows(Collection<AtMostZero> start) {
      start.forEach(this::add);
    }

    Rows(Map<List<BigFraction>, AtMostZero> start) {
      tightest.putAll(start);
    }

    void add(AtMostZero statement) {
      if (statement.speaksOfVariables()) {
        AtMostZero row = statement.normal();
        tightest.merge(row.form().factors(), row, Rows::tighter);
      } else if (!statement.isTrue()) {
        tightest.put(CONTRADICTION, statement);
      }
    }

    private static AtMostZero tighter(AtMostZero a, AtMostZero b) {
      int order = a.form().constant().compareTo(b.form().constant());
      return order > 0 || order == 0 && a.strict() ? a : b;
    }

    LinearSystem system(int variables) {
      return new LinearSystem(variables, tightest);
    }
  }
}
