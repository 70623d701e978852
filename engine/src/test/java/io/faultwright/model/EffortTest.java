package io.faultwright.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.source.Place;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class EffortTest {
  private static final Effort LOOK = taken(Access.OUTSIDE, 20);
  private static final Effort OPEN = taken(Access.PANEL, 3);
  private static final Effort GAUGE = taken(Access.REFRIGERANT_CIRCUIT, 2);

  private static Effort taken(Access access, int minutes) {
    KnowledgeBase base =
        new KnowledgeBaseBuilder()
            .reading(
                "r",
                new Domain.Choice(List.of(new NamedValue("a", "a")), false),
                access,
                minutes,
                Condition.ALWAYS)
            .build();
    return Effort.of(base.readings().get("r"), AccessWeights.USUAL);
  }

  @Test
  void whatIsEasierToGetAtComesFirstHoweverLongItTakes() {
    assertTrue(LOOK.compareTo(OPEN) < 0);
    assertTrue(OPEN.compareTo(GAUGE) < 0);
    assertTrue(Effort.NONE.compareTo(LOOK) < 0);
  }

  @Test
  void weightsOfTheHandbookCount() {
    AccessWeights weights =
        new AccessWeights(
            BigFraction.ONE, BigFraction.of(2), BigFraction.of(3), BigFraction.of(15, 2));
    SetUp gauges =
        new SetUp("g", new Place("", 1, 1, 1), "G", BigFraction.of(4), Access.REFRIGERANT_CIRCUIT);
    assertEquals(BigFraction.of(30), Effort.of(gauges, weights).weighted());
    assertEquals(BigFraction.of(4), Effort.of(gauges, weights).minutes());
  }

  @Test
  void severalTakeTheGravestAccessAndAllTheMinutes() {
    Effort all = LOOK.plus(GAUGE).plus(OPEN);
    assertEquals(Access.REFRIGERANT_CIRCUIT, all.access());
    assertEquals(BigFraction.of(25), all.minutes());
    assertEquals(BigFraction.of(20 + 2 * 4 + 3 * 2), all.weighted());
    assertEquals(all, Effort.NONE.plus(all));
  }
}
