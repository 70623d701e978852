package io.faultwright.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class CheckValueTest {
  private static final String KEY = "00112233445566778899aabbccddeeff";

  private static HandIn handIn(String name, int choice) {
    return new HandIn(
        "warm-rooms",
        "0b1c2d3e4f506172",
        7,
        name,
        "2026-04-14T10:32",
        List.of(
            new HandIn.Answer("which-fault-0b1c", OptionalInt.of(choice)),
            new HandIn.Answer("why", OptionalInt.empty())));
  }

  @Test
  void standsForEveryFieldInOneText() {
    assertEquals(
        """
        faultwright hand-in 1
        session=warm-rooms
        quiz=0b1c2d3e4f506172
        participant=7
        name=Ada Nør
        handed-in=2026-04-14T10:32
        which-fault-0b1c=2
        why=-
        """,
        handIn("Ada\nNør", 2).canonical());
  }

  /** Computed with `openssl dgst -sha256 -hmac KEY` over the text above. */
  @Test
  void equalsWhatAnotherProgramComputes() {
    assertEquals("da5af9019d4d85e9cf407b0756f74655", CheckValue.of(handIn("Ada Nør", 2), KEY));
  }

  @Test
  void changesWithEveryField() {
    String whole = CheckValue.of(handIn("Ada Nør", 2), KEY);
    assertNotEquals(whole, CheckValue.of(handIn("Ada Nør", 3), KEY));
    assertNotEquals(whole, CheckValue.of(handIn("Ada Nor", 2), KEY));
    assertNotEquals(whole, CheckValue.of(handIn("Ada Nør", 2), KEY.replace('0', '1')));
  }

  @Test
  void keyFollowsFromTheAnswersAndTheParticipant() {
    assertEquals(CheckValue.key("answers", 1), CheckValue.key("answers", 1));
    assertNotEquals(CheckValue.key("answers", 1), CheckValue.key("answers", 2));
    assertNotEquals(CheckValue.key("answers", 1), CheckValue.key("answers.", 1));
  }
}
