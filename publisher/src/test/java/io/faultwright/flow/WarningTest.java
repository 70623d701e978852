package io.faultwright.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The hazard of a caution is its first sentence. */
class WarningTest {
  @Test
  void hazardEndsWithTheFirstSentence() {
    assertHazard("Live parts will kill.", "Live parts will kill. Isolate first.", true);
    assertHazard("Fins cut at 0.5 mm!", "Fins cut at 0.5 mm! Wear gloves.", true);
    assertHazard("Hot surface", " Hot surface ", false);
    assertHazard("One sentence.", "One sentence.", false);
    assertHazard("", "", false);
  }

  private static void assertHazard(String hazard, String text, boolean more) {
    Warning warning = new Warning("DANGER", true, text);
    assertEquals(hazard, warning.hazard());
    assertEquals(more, warning.hasMore());
  }
}
