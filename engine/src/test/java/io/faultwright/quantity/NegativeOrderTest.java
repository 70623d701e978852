package io.faultwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/**
 * Freezers live below zero. The fraction library ordered negative values by their magnitude up to
 * its version 1.2; this fails should such a version come back.
 */
class NegativeOrderTest {
  @Test
  void minusFortyIsLessThanMinusTen() {
    assertEquals(-1, BigFraction.of(-40).compareTo(BigFraction.of(-10)));
    assertEquals(1, BigFraction.of(-10, 3).compareTo(BigFraction.of(-40, 3)));
  }

  @Test
  void intervalBelowZero() {
    Interval freezer = Interval.closed(BigFraction.of(-40), BigFraction.of(-18));
    assertTrue(freezer.contains(BigFraction.of(-20)));
    assertFalse(freezer.contains(BigFraction.of(-10)));
    assertFalse(freezer.contains(BigFraction.of(-41)));
  }
}
