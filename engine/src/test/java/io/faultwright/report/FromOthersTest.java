package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.model.FaultPair;
import java.util.List;
import org.junit.jupiter.api.Test;

class FromOthersTest {
  @Test
  void theFaultOfMostPairsComesFirstAndEachPairStandsOnce() {
    List<FaultPair> pairs =
        List.of(
            FaultPair.of("a", "z"),
            FaultPair.of("b", "z"),
            FaultPair.of("c", "z"),
            FaultPair.of("a", "b"));
    assertEquals(
        List.of(List.of("z from a", "b", "c"), List.of("a from b")), new FromOthers(pairs).lines());
  }

  @Test
  void ofEqualsTheFirstByIdIsNamed() {
    assertEquals(
        List.of(List.of("a from b")), new FromOthers(List.of(FaultPair.of("b", "a"))).lines());
  }
}
