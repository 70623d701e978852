package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Pairs stand in the order of their first rules, then of their second. */
class RulePairTest {
  @Test
  void byTheFirstThenByTheSecond() {
    RulePair ac = new RulePair("a", "c");
    RulePair ba = new RulePair("b", "a");
    RulePair bb = new RulePair("b", "b");
    assertEquals(List.of(ac, ba, bb), Stream.of(bb, ba, ac).sorted().toList());
  }
}
