package io.faultwright.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class DrawTest {
  private static List<String> drawn(String seed, String... participants) {
    return Draw.tickets(seed, List.of(participants)).stream()
        .map(Draw.Ticket::participant)
        .toList();
  }

  /**
   * The digests are those of the program sha256sum of GNU coreutils for `lottery-42:1` and so on.
   */
  @Test
  void anybodyCanRepeatIt() {
    assertEquals(List.of("3", "5", "1", "4", "2"), drawn("lottery-42", "1", "2", "3", "4", "5"));
    assertEquals(
        "262e738d18233b528328530dafa04666aac3a27f5feebbcfbdd2ab6ac253ac16",
        Draw.tickets("lottery-42", List.of("7")).get(0).digest());
  }

  @Test
  void neitherOrderNorRepetitionCounts() {
    assertEquals(drawn("seed", "a", "b", "c"), drawn("seed", "c", "a", "b", "a"));
  }
}
