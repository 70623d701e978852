package io.faultwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class SaturationPointTest {
  /** Points from pairs of degrees Celsius and bar. */
  private static List<SaturationPoint> table(int... figures) {
    return IntStream.range(0, figures.length / 2)
        .mapToObj(
            i ->
                new SaturationPoint(
                    BigFraction.of(figures[2 * i]), BigFraction.of(figures[2 * i + 1])))
        .toList();
  }

  @Test
  void aTableThatRisesIsALine() {
    List<SaturationPoint> table = table(-40, 1, 0, 6, 40, 18);
    assertEquals(OptionalInt.empty(), SaturationPoint.firstBreak(table));
    assertEquals(
        Optional.of(BigFraction.of(20)), SaturationPoint.line(table).at(BigFraction.of(12)));
  }

  @Test
  void theFirstPointThatDoesNotRiseIsNamed() {
    assertEquals(OptionalInt.of(2), SaturationPoint.firstBreak(table(-40, 1, 0, 6, 10, 6, 5, 9)));
    assertEquals(OptionalInt.of(1), SaturationPoint.firstBreak(table(0, 6, -40, 7)));
    assertEquals(OptionalInt.of(1), SaturationPoint.firstBreak(table(0, 6, 0, 7)));
    assertEquals(OptionalInt.empty(), SaturationPoint.firstBreak(table()));
    assertThrows(
        IllegalArgumentException.class, () -> SaturationPoint.line(table(-40, 1, 0, 6, 10, 6)));
  }

  @Test
  void dewAboveBubbleIsFoundBetweenThePointsOfTheOther() {
    Polyline bubble = SaturationPoint.line(table(-40, 2, 40, 18));
    assertEquals(
        Optional.empty(),
        SaturationPoint.dewAboveBubble(bubble, SaturationPoint.line(table(-40, 1, 60, 20))));
    assertEquals(
        Optional.of(BigFraction.of(20)),
        SaturationPoint.dewAboveBubble(
            bubble, SaturationPoint.line(table(-40, 1, 0, 10, 20, 15, 40, 18))));
  }
}
