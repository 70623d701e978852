package io.faultwright.field;

import io.faultwright.model.Condition.CannotBeTaken;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Domain;
import io.faultwright.model.Value;
import io.faultwright.quantity.Exact;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Classes of a measured reading: the steps in which it is read, and the thresholds of the rules,
 * each a class of its own, and the stretches between them. So a threshold that is said holds
 * exactly, however finely values were written.
 */
final class NumberClasses implements Classes {
  /** Steps across the range at most; a finer reading is counted in coarser steps. */
  private static final int MOST = 1_000;

  /** Steps across the range at least, where it is not said how finely a reading is read. */
  private static final int FEWEST = 100;

  private final List<BigFraction> cuts;
  private final SortedSet<Integer> ofRules = new TreeSet<>();

  /**
   * For a reading.
   *
   * @param thresholds that rules ask for
   */
  NumberClasses(Domain.Measured domain, Collection<BigFraction> thresholds) {
    TreeSet<BigFraction> all = new TreeSet<>(Exact::compare);
    all.addAll(thresholds);
    steps(domain, all);
    this.cuts = List.copyOf(all);
    thresholds.forEach(value -> ofRules.add(find(value) / 2));
  }

  private static void steps(Domain.Measured domain, TreeSet<BigFraction> into) {
    BigFraction low = domain.range().low().orElseThrow().value();
    BigFraction high = domain.range().high().orElseThrow().value();
    BigFraction step = step(domain, high.subtract(low));
    BigFraction at = step.multiply(BigFraction.of(Exact.floor(low.divide(step))));
    while (Exact.compare(at, high) <= 0) {
      into.add(at);
      at = at.add(step);
    }
  }

  /** The resolution, made coarser by 5 and 2 in turn until few enough steps are left. */
  private static BigFraction step(Domain.Measured domain, BigFraction length) {
    BigFraction step = domain.resolution().orElseGet(() -> fine(length));
    for (int i = 0; Exact.compare(length, step.multiply(MOST)) > 0; i++) {
      step = step.multiply(i % 2 == 0 ? 5 : 2);
    }
    return step;
  }

  /** The power of ten that is less than a hundredth of the range. */
  private static BigFraction fine(BigFraction length) {
    BigFraction step = BigFraction.ONE;
    while (Exact.compare(length, step.multiply(FEWEST)) < 0) {
      step = step.divide(10);
    }
    return step;
  }

  @Override
  public int of(Value value) {
    return value instanceof Value.Number number ? find(number.amount()) : NOT_TAKEN;
  }

  /** Odd for a cut, even for the stretch below it. */
  private int find(BigFraction value) {
    int low = 0;
    int high = cuts.size();
    while (low < high) {
      int middle = (low + high) / 2;
      int order = Exact.compare(value, cuts.get(middle));
      if (order == 0) {
        return 2 * middle + 1;
      }
      low = order > 0 ? middle + 1 : low;
      high = order > 0 ? high : middle;
    }
    return 2 * low;
  }

  @Override
  public Stream<Split> splits(Histogram wanted, Histogram others) {
    List<Split> splits = new ArrayList<>();
    splits.add(new Split(new CannotBeTaken(), wanted.in(NOT_TAKEN), others.in(NOT_TAKEN)));
    TreeSet<Integer> seen = new TreeSet<>(wanted.taken());
    seen.addAll(others.taken());
    long wantedBelow = 0;
    long othersBelow = 0;
    for (Integer at = seen.isEmpty() ? null : seen.first(); at != null; at = seen.higher(at)) {
      wantedBelow += wanted.in(at);
      othersBelow += others.in(at);
      if (seen.higher(at) != null) {
        Gap gap = gap(at, seen.higher(at));
        splits.add(new Split(gap.lower(), wantedBelow, othersBelow));
        splits.add(
            new Split(
                gap.upper(),
                wanted.rows() - wanted.in(NOT_TAKEN) - wantedBelow,
                others.rows() - others.in(NOT_TAKEN) - othersBelow));
      }
    }
    return splits.stream();
  }

  /** A threshold between two classes, and to which side it belongs. */
  private record Gap(BigFraction threshold, boolean toLower) {
    InInterval lower() {
      return new InInterval(toLower ? Interval.atMost(threshold) : Interval.below(threshold));
    }

    InInterval upper() {
      return new InInterval(toLower ? Interval.above(threshold) : Interval.atLeast(threshold));
    }
  }

  /** The first threshold of a rule that lies between, or else the middle one of the steps. */
  private Gap gap(int below, int above) {
    int first = below / 2;
    int last = (above - 1) / 2;
    SortedSet<Integer> between = ofRules.subSet(first, last + 1);
    int cut = between.isEmpty() ? (first + last) / 2 : between.first();
    return new Gap(cuts.get(cut), 2 * cut + 1 < above);
  }
}
