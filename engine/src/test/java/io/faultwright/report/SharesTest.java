package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.finding.Share;
import org.junit.jupiter.api.Test;

class SharesTest {
  @Test
  void percentagesAreShortAndNeverRoundedToNothingOrAll() {
    assertExact("0 %", 0);
    assertExact("0.0000012 %", 0.0000000123);
    assertExact("3.1 %", 0.0312);
    assertExact("31 %", 0.3123);
    assertExact("over 99 %", 0.9999);
    assertExact("100 %", 1);
  }

  @Test
  void boundsAreLabelledAsBounds() {
    assertEquals("between 3 % and 5.5 % (bounds)", Shares.words(new Share(0.03, 0.055, false)));
  }

  private static void assertExact(String expected, double share) {
    assertEquals(expected, Shares.words(new Share(share, share, true)));
  }
}
