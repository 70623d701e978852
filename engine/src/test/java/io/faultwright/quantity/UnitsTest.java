package io.faultwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class UnitsTest {
  private static Unit unit(String symbol) {
    return Units.find(symbol).orElseThrow();
  }

  @Test
  void everyUnitHasAUnitOfDifferencesOfItsSize() {
    for (String symbol : Units.symbols()) {
      Unit differences = Units.ofDifferences(unit(symbol));
      assertEquals(unit(symbol).scale(), differences.scale(), symbol);
      assertEquals(0, differences.offset().signum(), symbol);
    }
  }

  @Test
  void differences() {
    assertEquals("K", Units.ofDifferences(unit("°C")).symbol());
    assertEquals("Δ°F", Units.ofDifferences(unit("°F")).symbol());
    assertEquals("psi", Units.ofDifferences(unit("psi(a)")).symbol());
    assertEquals("V", Units.ofDifferences(unit("V")).symbol());
  }
}
