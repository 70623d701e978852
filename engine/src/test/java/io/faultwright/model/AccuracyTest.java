package io.faultwright.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.model.Accuracy.Fixed;
import io.faultwright.model.Accuracy.OfReading;
import io.faultwright.model.Accuracy.OfScale;
import io.faultwright.quantity.Decimals;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class AccuracyTest {
  @Test
  void partsAddUp() {
    Accuracy accuracy =
        new Accuracy(
            List.of(
                new Fixed(number("0.1")),
                new OfReading(number("0.005")),
                new OfScale(number("0.01"), number("35"))));
    assertEquals(number("0.65"), accuracy.at(number("40")));
    assertEquals(number("0.65"), accuracy.at(number("-40")));
    assertEquals(number("0.45"), accuracy.at(BigFraction.ZERO));
  }

  /**
   * EN 837-1 (pressure gauges): an accuracy class is the permissible error in per cent of the span.
   * A gauge of class 1 to 35 bar is right to 0.35 bar all along its scale. From memory.
   */
  @Test
  void classOneGaugeIsAsGoodEverywhere() {
    Accuracy gauge = new Accuracy(List.of(new OfScale(number("0.01"), number("35"))));
    assertEquals(number("0.35"), gauge.at(BigFraction.ZERO));
    assertEquals(number("0.35"), gauge.at(number("35")));
  }

  @Test
  void nothingIsNoAccuracy() {
    assertThrows(IllegalArgumentException.class, () -> new Accuracy(List.of()));
  }

  private static BigFraction number(String text) {
    return Decimals.parse(text);
  }
}
