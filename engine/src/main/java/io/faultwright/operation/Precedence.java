package io.faultwright.operation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/** Which of several lines is taken, as {@code ahead-of} says it. */
final class Precedence {
  private Precedence() {}

  /**
   * Lines that no other goes ahead of, or only in a circle; those ahead of what is ahead of a line
   * count. Never empty, in the given order.
   */
  static List<Line> foremost(List<Line> enabled) {
    List<BitSet> ahead = enabled.stream().map(line -> ahead(line, enabled)).toList();
    List<Line> foremost = new ArrayList<>();
    for (int i = 0; i < enabled.size(); i++) {
      boolean behind = false;
      for (int j = 0; j < enabled.size(); j++) {
        behind |=
            ahead.get(i).get(enabled.get(j).number()) && !ahead.get(j).get(enabled.get(i).number());
      }
      if (!behind) {
        foremost.add(enabled.get(i));
      }
    }
    return foremost;
  }

  /** Numbers of the lines that go ahead of a line, perhaps by way of others. */
  private static BitSet ahead(Line line, List<Line> enabled) {
    BitSet ahead = new BitSet();
    Deque<Line> open = new ArrayDeque<>(List.of(line));
    while (!open.isEmpty()) {
      Line next = open.poll();
      for (Line other : enabled) {
        boolean first = Arrays.stream(next.silencedBy()).anyMatch(n -> n == other.number());
        if (first && !ahead.get(other.number())) {
          ahead.set(other.number());
          open.add(other);
        }
      }
    }
    return ahead;
  }

  /** Pairs of foremost lines that do not do the same. */
  static List<List<Line>> undecided(List<Line> enabled) {
    List<Line> foremost = enabled.size() < 2 ? List.of() : foremost(enabled);
    List<List<Line>> pairs = new ArrayList<>();
    for (Line one : foremost) {
      for (Line other : foremost) {
        if (one.number() < other.number() && !one.sameAs(other)) {
          pairs.add(List.of(one, other));
        }
      }
    }
    return pairs;
  }
}
