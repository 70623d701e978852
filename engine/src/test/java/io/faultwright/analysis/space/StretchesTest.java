package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** What intervals share, and what holds them both. */
class StretchesTest {
  private static final Interval FREE = new Interval(Optional.empty(), Optional.empty());

  /** An interval as it is written in books: a round bracket leaves the end out. */
  private static Interval interval(String text) {
    String[] ends = text.substring(1, text.length() - 1).split(";");
    return new Interval(end(ends[0], text.startsWith("[")), end(ends[1], text.endsWith("]")));
  }

  private static Optional<End> end(String text, boolean included) {
    return text.equals("-")
        ? Optional.empty()
        : Optional.of(new End(BigFraction.of(Integer.parseInt(text)), included));
  }

  private static void shared(String expected, String a, String b) {
    assertEquals(Optional.of(interval(expected)), Stretches.intersection(interval(a), interval(b)));
    assertEquals(Optional.of(interval(expected)), Stretches.intersection(interval(b), interval(a)));
  }

  private static void apart(String a, String b) {
    assertEquals(Optional.empty(), Stretches.intersection(interval(a), interval(b)));
    assertEquals(Optional.empty(), Stretches.intersection(interval(b), interval(a)));
  }

  private static void around(String expected, String a, String b) {
    assertEquals(interval(expected), Stretches.hull(interval(a), interval(b)));
    assertEquals(interval(expected), Stretches.hull(interval(b), interval(a)));
  }

  @Test
  void whatTwoShare() {
    shared("[2;4]", "[1;4]", "[2;5]");
    shared("(2;4)", "[1;4)", "(2;5]");
    shared("(2;4)", "[2;4)", "(2;4]");
    shared("[2;3]", "[1;5]", "[2;3]");
    shared("[3;3]", "[1;3]", "[3;5]");
    shared("[2;5]", "[2;-]", "[-;5]");
    shared("[2;5]", "[-;-]", "[2;5]");
    shared("[2;-]", "[1;-]", "[2;-]");
    assertEquals(Optional.of(FREE), Stretches.intersection(FREE, FREE));
  }

  @Test
  void whatLiesApart() {
    apart("[1;2]", "[3;4]");
    apart("[1;2)", "[2;4]");
    apart("[1;2]", "(2;4]");
    apart("[1;2)", "(2;4]");
    apart("[3;-]", "[-;2]");
  }

  @Test
  void theHull() {
    around("[1;5]", "[1;2]", "[4;5]");
    around("[1;5]", "(1;2]", "[1;5]");
    around("(1;5)", "(1;2]", "(3;5)");
    around("[1;5]", "[1;5)", "[2;5]");
    around("[-;5]", "[-;2]", "[1;5]");
    around("[1;-]", "[1;2]", "[4;-]");
  }

  @Test
  void theMiddle() {
    assertEquals(BigFraction.of(7, 2), Stretches.middle(interval("[2;5)")));
  }
}
