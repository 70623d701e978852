package io.faultwright.analysis.operation;

import io.faultwright.model.Sequence.Event;
import io.faultwright.operation.Line;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Moments that can be reached, and on which way.
 *
 * @param before the moments before; absent at the beginning
 * @param spot where the machine is
 * @param bounds values of the clocks
 * @param later whether time passed on the way
 * @param event what happened on the way; absent where nothing did
 * @param limits what the clocks had to be, before the line was taken
 * @param line that was taken; absent where none was
 * @param events how many events led there from the beginning
 */
record Reach(
    Optional<Reach> before,
    Spot spot,
    Bounds bounds,
    boolean later,
    Optional<Event> event,
    List<Limit> limits,
    Optional<Line> line,
    int events) {
  /**
   * What a clock had to be.
   *
   * @param atLeast whether the steps are the fewest; else the most
   */
  record Limit(int clock, boolean atLeast, long steps) {}

  Reach {
    limits = List.copyOf(limits);
  }

  static Reach beginning(Spot spot, Bounds bounds) {
    return new Reach(
        Optional.empty(), spot, bounds, false, Optional.empty(), List.of(), Optional.empty(), 0);
  }

  /** Some of the moments, by some limits of the clocks. */
  Reach within(Bounds fewer, List<Limit> more) {
    return new Reach(
        Optional.of(this), spot, fewer, false, Optional.empty(), more, Optional.empty(), events);
  }

  /** Whether fewer events lead there, or as many and it comes earlier. */
  boolean isShorterThan(Reach other) {
    return events < other.events
        || events == other.events && bounds.earliest() < other.bounds.earliest();
  }

  /** The way from the beginning. */
  List<Reach> way() {
    List<Reach> way = new ArrayList<>();
    for (Optional<Reach> one = Optional.of(this); one.isPresent(); one = one.get().before) {
      way.add(one.get());
    }
    Collections.reverse(way);
    return way;
  }
}
