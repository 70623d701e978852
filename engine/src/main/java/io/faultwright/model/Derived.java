package io.faultwright.model;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import io.faultwright.quantity.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How a reading is computed from other measured readings: a sum of their values, each with a
 * factor, and of what is read off curves.
 *
 * @param terms operand id to its factor, in the units of both readings; none zero
 * @param bends what is read off curves; with the terms at least one
 * @param constant what is added to the sum
 */
public record Derived(
    SortedMap<String, BigFraction> terms, List<Bend> bends, BigFraction constant) {
  /**
   * A reading's value in other words: a factor times another quantity, plus a number.
   *
   * @param reading id of the other quantity
   */
  public record Converted(String reading, BigFraction factor, BigFraction added) {}

  public Derived {
    terms = Sorted.copy(terms);
    bends = List.copyOf(bends);
    boolean idle = terms.values().stream().anyMatch(factor -> factor.signum() == 0);
    if (terms.isEmpty() && bends.isEmpty() || idle) {
      throw new IllegalArgumentException("a derived reading needs operands that matter: " + terms);
    }
  }

  /** Without curves. */
  public static Derived linear(SortedMap<String, BigFraction> terms, BigFraction constant) {
    return new Derived(terms, List.of(), constant);
  }

  /** The value of a reading in a unit of its dimension. */
  public static Derived of(Reading reading, Unit unit) {
    Unit own = ((Domain.Measured) reading.domain()).unit();
    BigFraction zero = own.convert(BigFraction.ZERO, unit);
    BigFraction one = own.convert(BigFraction.ONE, unit).subtract(zero);
    return linear(new TreeMap<>(Map.of(reading.id(), one)), zero);
  }

  /** The first minus the second, in the first one's unit of differences; one dimension. */
  public static Derived difference(Reading first, Reading second) {
    Unit unit = ((Domain.Measured) first.domain()).unit();
    return of(first, unit).plus(of(second, unit).times(BigFraction.ONE.negate()));
  }

  /** The same value as another reading. */
  public static Derived same(String reading) {
    return linear(new TreeMap<>(Map.of(reading, BigFraction.ONE)), BigFraction.ZERO);
  }

  /** What is read off a curve. */
  public static Derived along(Curve curve, Derived argument) {
    Bend bend = new Bend(BigFraction.ONE, curve, argument);
    return new Derived(new TreeMap<>(), List.of(bend), BigFraction.ZERO);
  }

  public Derived plus(Derived other) {
    SortedMap<String, BigFraction> sum = new TreeMap<>(terms);
    other.terms.forEach((id, factor) -> sum.merge(id, factor, BigFraction::add));
    sum.values().removeIf(factor -> factor.signum() == 0);
    List<Bend> both = Stream.concat(bends.stream(), other.bends.stream()).toList();
    return new Derived(sum, both, constant.add(other.constant));
  }

  public Derived plus(BigFraction number) {
    return new Derived(terms, bends, constant.add(number));
  }

  public Derived times(BigFraction number) {
    SortedMap<String, BigFraction> products = new TreeMap<>();
    terms.forEach((id, factor) -> products.put(id, factor.multiply(number)));
    List<Bend> bent = bends.stream().map(bend -> bend.times(number)).toList();
    return new Derived(products, bent, constant.multiply(number));
  }

  /** The same with every operand said by another quantity. */
  public Derived with(Function<String, Converted> operand) {
    SortedMap<String, BigFraction> changed = new TreeMap<>();
    BigFraction sum = constant;
    for (Map.Entry<String, BigFraction> term : terms.entrySet()) {
      Converted to = operand.apply(term.getKey());
      changed.merge(to.reading, term.getValue().multiply(to.factor), BigFraction::add);
      sum = sum.add(term.getValue().multiply(to.added));
    }
    List<Bend> bent = bends.stream().map(bend -> bend.with(operand)).toList();
    return new Derived(changed, bent, sum);
  }

  /** Ids of the readings it is computed from. */
  public SortedSet<String> operands() {
    SortedSet<String> all = new TreeSet<>(terms.keySet());
    bends.forEach(bend -> all.addAll(bend.argument().operands()));
    return Sorted.set(all);
  }

  /** Whether it is just the value of one other reading. */
  public boolean isSame() {
    return constant.signum() == 0
        && bends.isEmpty()
        && terms.size() == 1
        && terms.values().iterator().next().compareTo(BigFraction.ONE) == 0;
  }

  /** Whether it depends on the machine's refrigerant. */
  public boolean needsRefrigerant() {
    return bends.stream().anyMatch(Bend::needsRefrigerant);
  }

  /**
   * The value, once every operand's value is known; empty too where a curve ends before, or where
   * the machine has no such curve.
   */
  public Optional<BigFraction> value(
      Function<String, Optional<BigFraction>> operand, Optional<String> refrigerant) {
    BigFraction sum = constant;
    for (Map.Entry<String, BigFraction> term : terms.entrySet()) {
      Optional<BigFraction> known = operand.apply(term.getKey());
      if (known.isEmpty()) {
        return Optional.empty();
      }
      sum = sum.add(term.getValue().multiply(known.get()));
    }
    for (Bend bend : bends) {
      Optional<BigFraction> known = bend.value(operand, refrigerant);
      if (known.isEmpty()) {
        return Optional.empty();
      }
      sum = sum.add(known.get());
    }
    return Optional.of(sum);
  }

  /**
   * Stretch that holds every value it can take while each operand lies in its range; just those
   * values where no operand occurs twice. Empty where no curve reaches so far.
   *
   * @param ranges of the operands
   */
  public Optional<Interval> range(Function<String, Interval> ranges, Optional<String> refrigerant) {
    BigFraction low = constant;
    BigFraction high = constant;
    for (Map.Entry<String, BigFraction> term : terms.entrySet()) {
      Interval part = times(ranges.apply(term.getKey()), term.getValue());
      low = low.add(lowOf(part));
      high = high.add(highOf(part));
    }
    for (Bend bend : bends) {
      Optional<Interval> part = bend.range(ranges, refrigerant);
      if (part.isEmpty()) {
        return Optional.empty();
      }
      low = low.add(lowOf(part.get()));
      high = high.add(highOf(part.get()));
    }
    return Optional.of(Interval.closed(low, high));
  }

  /** Whether some operands within their ranges lie beyond an end of a curve. */
  public boolean mayLeaveCurves(Function<String, Interval> ranges, Optional<String> refrigerant) {
    return bends.stream().anyMatch(bend -> bend.mayLeave(ranges, refrigerant));
  }

  /** The equipment on which every operand exists. */
  public Condition applies(Map<String, Reading> readings) {
    return new Condition.All(
        operands().stream()
            .map(id -> readings.get(id).applies())
            .filter(applies -> !applies.equals(Condition.ALWAYS))
            .toList());
  }

  private static Interval times(Interval interval, BigFraction factor) {
    BigFraction low = lowOf(interval).multiply(factor);
    BigFraction high = highOf(interval).multiply(factor);
    return factor.signum() < 0 ? Interval.closed(high, low) : Interval.closed(low, high);
  }

  private static BigFraction lowOf(Interval interval) {
    return interval.low().map(End::value).orElseThrow();
  }

  private static BigFraction highOf(Interval interval) {
    return interval.high().map(End::value).orElseThrow();
  }
}
