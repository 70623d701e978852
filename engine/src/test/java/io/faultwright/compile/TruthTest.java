package io.faultwright.compile;

import static io.faultwright.model.Truth.FALSE;
import static io.faultwright.model.Truth.TRUE;
import static io.faultwright.model.Truth.UNKNOWN;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.model.Truth;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The strong three-valued tables of S. C. Kleene, "Introduction to Metamathematics", 1952, section
 * 64 (from memory).
 */
class TruthTest {
  private static final List<Truth> ALL = List.of(TRUE, FALSE, UNKNOWN);

  @Test
  void and() {
    assertEquals(
        List.of(TRUE, FALSE, UNKNOWN, FALSE, FALSE, FALSE, UNKNOWN, FALSE, UNKNOWN),
        ALL.stream().flatMap(a -> ALL.stream().map(a::and)).toList());
  }

  @Test
  void or() {
    assertEquals(
        List.of(TRUE, TRUE, TRUE, TRUE, FALSE, UNKNOWN, TRUE, UNKNOWN, UNKNOWN),
        ALL.stream().flatMap(a -> ALL.stream().map(a::or)).toList());
  }

  @Test
  void not() {
    assertEquals(List.of(FALSE, TRUE, UNKNOWN), ALL.stream().map(Truth::not).toList());
  }
}
