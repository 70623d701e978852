package io.faultwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.time.Duration;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Numbers as the library leaves them: with a sign above the line or below it. */
class ExactTest {
  private static final BigFraction BELOW_THE_LINE = BigFraction.of(24, -1);

  @Test
  void wholeNumbersAreWholeWhereverTheirSignIs() {
    assertTrue(Exact.isWhole(BELOW_THE_LINE));
    assertTrue(Exact.isWhole(BigFraction.of(-24)));
    assertFalse(Exact.isWhole(BigFraction.of(7, -2)));
  }

  @Test
  void theFloorIsBelowWhereverTheSignIs() {
    assertEquals(BigInteger.valueOf(-24), Exact.floor(BELOW_THE_LINE));
    assertEquals(BigInteger.valueOf(-4), Exact.floor(BigFraction.of(7, -2)));
    assertEquals(BigInteger.valueOf(3), Exact.floor(BigFraction.of(7, 2)));
  }

  @Test
  void roundingEndsWhereverTheSignIs() {
    Rounding rounding = Rounding.to(BigFraction.of(1, 10));
    BigFraction shown =
        assertTimeoutPreemptively(Duration.ofSeconds(5), () -> rounding.shown(BELOW_THE_LINE));
    assertEquals(0, Exact.compare(BigFraction.of(-24), shown));
  }
}
