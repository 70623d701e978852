package io.faultwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundingTest {
  private static Unit unit(String symbol) {
    return Units.find(symbol).orElseThrow();
  }

  private static Rounding rounding(Unit from, String resolution, Unit to) {
    return Rounding.to(
        Units.ofDifferences(from).convert(Decimals.parse(resolution), Units.ofDifferences(to)));
  }

  @ParameterizedTest
  @CsvSource({
    "65, °C, 1, 149, °F",
    "-18, °C, 1, -0.4, °F",
    "-18, °C, 0.5, -0.4, °F",
    "8.2, bar(g), 0.1, 118.9, psi(g)",
    "10.4, bar(g), 0.1, 150.8, psi(g)",
    "12, K, 1, 21.6, Δ°F",
    "1.1, kg, 0.1, 2.43, lb",
    "1200, m, 100, 3937, ft",
    "30, psi(g), 1, 2.07, bar(g)",
    "149, °F, 1, 65, °C"
  })
  void examples(String amount, String from, String resolution, String shown, String to) {
    BigFraction exact = unit(from).convert(Decimals.parse(amount), unit(to));
    assertEquals(shown, Decimals.show(rounding(unit(from), resolution, unit(to)).shown(exact)));
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "1.8, 1", "2, 2", "4.99, 2", "5, 5", "14.5, 10", "0.09, 0.05", "0.1, 0.1"})
  void theStepIsTheLargestThatIsNotCoarser(String resolution, String step) {
    assertEquals(Decimals.parse(step), Rounding.to(Decimals.parse(resolution)).step());
  }

  /** Seeded amounts in every pair of units that are shown for each other. */
  @Test
  void noValueShownChangesItsSide() {
    Random random = new Random(20260302);
    for (String symbol : Units.symbols()) {
      for (UnitSystem system : UnitSystem.values()) {
        Unit from = unit(symbol);
        Unit to = Units.in(from, system);
        Stream.of("0.1", "0.25", "1", "5").forEach(r -> assertSides(random, from, r, to));
      }
    }
  }

  private static void assertSides(Random random, Unit from, String resolution, Unit to) {
    Rounding rounding = rounding(from, resolution, to);
    for (int i = 0; i < 40; i++) {
      BigFraction amount = BigFraction.of(random.nextInt(20_000) - 5_000, 40);
      BigFraction exact = from.convert(amount, to);
      assertSides(rounding, exact, rounding.shown(exact));
    }
  }

  /** The values an instrument shows around an amount. */
  private static void assertSides(Rounding rounding, BigFraction exact, BigFraction shown) {
    BigFraction step = rounding.step();
    BigFraction near = step.multiply((long) Math.floor(exact.divide(step).doubleValue()));
    for (int k = -2; k <= 3; k++) {
      BigFraction value = near.add(step.multiply(k));
      assertEquals(Integer.signum(value.compareTo(exact)), Integer.signum(value.compareTo(shown)));
    }
  }

  /** Two amounts a resolution apart never look the same. */
  @Test
  void stepsOfTheResolutionStayApart() {
    Rounding rounding = rounding(unit("bar(g)"), "0.1", unit("psi(g)"));
    BigFraction before = null;
    for (int i = 0; i <= 300; i++) {
      BigFraction shown =
          rounding.shown(unit("bar(g)").convert(BigFraction.of(i, 10), unit("psi(g)")));
      assertTrue(before == null || before.compareTo(shown) < 0);
      before = shown;
    }
  }

  @Test
  void aResolutionIsGreaterThanZero() {
    assertThrows(IllegalArgumentException.class, () -> Rounding.to(BigFraction.ZERO));
  }
}
