package io.faultwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class IntervalTest {
  private static final Interval FREEZER =
      Interval.closed(Decimals.parse("-45"), Decimals.parse("30"));

  /** Releases of the fraction library before 1.3 ordered negative numbers the wrong way round. */
  @Test
  void negativeNumbersLieInOrder() {
    assertTrue(Decimals.parse("-45").compareTo(Decimals.parse("-14")) < 0);
    assertTrue(Decimals.parse("-0.5").compareTo(Decimals.parse("-0.25")) < 0);
    assertTrue(FREEZER.contains(Decimals.parse("-14")));
    assertFalse(FREEZER.contains(Decimals.parse("-45.1")));
  }

  @Test
  void bothEndsOfAClosedIntervalBelongToIt() {
    assertTrue(FREEZER.contains(Decimals.parse("-45")));
    assertTrue(FREEZER.contains(Decimals.parse("30")));
  }

  @Test
  void aThresholdBelongsToOneSideOnly() {
    assertFalse(Interval.above(Decimals.parse("65")).contains(Decimals.parse("65")));
    assertTrue(Interval.atLeast(Decimals.parse("65")).contains(Decimals.parse("65")));
    assertFalse(Interval.below(Decimals.parse("65")).contains(Decimals.parse("65")));
    assertTrue(Interval.atMost(Decimals.parse("65")).contains(Decimals.parse("65")));
  }

  @Test
  void decimalsAreShownWithoutTrailingZeros() {
    assertEquals("-12.5", Decimals.show(Decimals.parse("-12.50")));
    assertEquals("0.333333", Decimals.show(Decimals.parse("1").divide(3)));
  }
}
