package io.faultwright.analysis.space;

import io.faultwright.quantity.Interval;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The solutions of several systems over the same variables, joined.
 *
 * @param parts the systems
 */
record Solutions(List<CurvedSystem> parts) {
  Solutions {
    parts = List.copyOf(parts);
  }

  static Solutions of(CurvedSystem only) {
    return new Solutions(List.of(only));
  }

  /** What becomes of each part. */
  Solutions map(UnaryOperator<CurvedSystem> change) {
    return new Solutions(parts.stream().map(change).toList());
  }

  /** What becomes of each part, in several ways. */
  Solutions flatMap(Function<CurvedSystem, Stream<CurvedSystem>> change) {
    return new Solutions(parts.stream().flatMap(change).toList());
  }

  Solutions with(LinearForm form, Interval interval) {
    return map(part -> part.with(form, interval));
  }

  /** Only the parts that have solutions. */
  Solutions solvable() {
    List<CurvedSystem> left = parts.stream().filter(CurvedSystem::isSolvable).toList();
    return left.size() == parts.size() ? this : new Solutions(left);
  }

  boolean isEmpty() {
    return parts.isEmpty();
  }

  /** An interval that holds every value of a form; empty where there is none. */
  Optional<Interval> image(LinearForm form) {
    return parts.stream().flatMap(part -> part.image(form).stream()).reduce(Stretches::hull);
  }
}
