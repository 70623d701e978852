package io.faultwright.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.flow.CardOutline.Way;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class CardOutlineTest {
  private static Way way(int frequency, String outcome, String... conditions) {
    return new Way(List.of(conditions), outcome, BigFraction.of(frequency));
  }

  @Test
  void whatIsCommonStandsOnce() {
    List<Card.Entry> outline =
        CardOutline.of(
            List.of(
                way(1, "Relay", "signal", "voltage none"),
                way(3, "Valve", "voltage", "signal", "hot"),
                way(2, "Coil", "signal", "voltage", "cold"),
                way(1, "Clock", "no signal")));
    assertEquals(
        List.of(
            new Card.Entry(0, "signal", ""),
            new Card.Entry(1, "voltage", ""),
            new Card.Entry(2, "hot", "Valve"),
            new Card.Entry(2, "cold", "Coil"),
            new Card.Entry(1, "voltage none", "Relay"),
            new Card.Entry(0, "no signal", "Clock")),
        outline);
  }

  /** What shows an outcome by itself stands above what needs more. */
  @Test
  void aShorterWayEndsAtTheBranch() {
    assertEquals(
        List.of(new Card.Entry(0, "a", "X"), new Card.Entry(1, "b", "Y")),
        CardOutline.of(List.of(way(1, "X", "a"), way(1, "Y", "a", "b"))));
  }

  /** Along the lines above it, every entry has the conditions of its way, and no others. */
  @Test
  void everyWayCanBeReadOffTheOutline() {
    List<Way> ways =
        List.of(
            way(1, "A", "p", "q", "r"),
            way(5, "B", "p", "s"),
            way(2, "C", "s", "q"),
            way(2, "D", "t"),
            way(2, "E", "q"));
    List<Card.Entry> outline = CardOutline.of(ways);
    for (Way way : ways) {
      int at = index(outline, way.outcome());
      Set<String> held = new TreeSet<>();
      int depth = outline.get(at).depth() + 1;
      for (int i = at; i >= 0; i--) {
        if (outline.get(i).depth() < depth) {
          held.addAll(List.of(outline.get(i).conditions().split("; ")));
          depth = outline.get(i).depth();
        }
      }
      assertEquals(new TreeSet<>(way.conditions()), held);
    }
  }

  private static int index(List<Card.Entry> outline, String outcome) {
    for (int i = 0; i < outline.size(); i++) {
      if (outline.get(i).outcome().equals(outcome)) {
        return i;
      }
    }
    throw new AssertionError(outcome);
  }
}
