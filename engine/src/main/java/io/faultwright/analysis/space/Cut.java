package io.faultwright.analysis.space;

import io.faultwright.quantity.Exact;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A place at which the number line is cut.
 *
 * @param value where
 * @param above whether the value itself belongs to the lower piece
 */
public record Cut(BigFraction value, boolean above) implements Comparable<Cut> {
  @Override
  public int compareTo(Cut other) {
    int order = Exact.compare(value, other.value);
    return order != 0 ? order : Boolean.compare(above, other.above);
  }

  /** The cuts at the ends of an interval. */
  public static SortedSet<Cut> of(Interval interval) {
    SortedSet<Cut> cuts = new TreeSet<>();
    interval.low().ifPresent(end -> cuts.add(start(interval)));
    interval.high().ifPresent(end -> cuts.add(end(interval)));
    return cuts;
  }

  /** Where an interval with a lower end begins. */
  public static Cut start(Interval interval) {
    Interval.End low = interval.low().orElseThrow();
    return new Cut(low.value(), !low.included());
  }

  /** Where an interval with an upper end ends. */
  public static Cut end(Interval interval) {
    Interval.End high = interval.high().orElseThrow();
    return new Cut(high.value(), high.included());
  }

  /** The two cuts that set a single value apart. */
  public static List<Cut> around(BigFraction value) {
    return List.of(new Cut(value, false), new Cut(value, true));
  }

  /** The pieces of a closed range between the cuts inside it, in ascending order. */
  public static List<Interval> pieces(Interval range, SortedSet<Cut> cuts) {
    Cut start = new Cut(range.low().orElseThrow().value(), false);
    Cut end = new Cut(range.high().orElseThrow().value(), true);
    List<Cut> borders = new ArrayList<>();
    borders.add(start);
    cuts.stream()
        .filter(cut -> cut.compareTo(start) > 0 && cut.compareTo(end) < 0)
        .forEach(borders::add);
    borders.add(end);
    List<Interval> pieces = new ArrayList<>();
    for (int i = 0; i + 1 < borders.size(); i++) {
      pieces.add(between(borders.get(i), borders.get(i + 1)));
    }
    return pieces;
  }

  private static Interval between(Cut low, Cut high) {
    return new Interval(
        Optional.of(new Interval.End(low.value, !low.above)),
        Optional.of(new Interval.End(high.value, high.above)));
  }
}
