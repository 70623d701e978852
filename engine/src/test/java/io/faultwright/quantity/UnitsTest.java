package io.faultwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitsTest {
  private static final List<BigFraction> VALUES =
      Stream.of("0", "1", "-40", "8.2", "65", "-459.67", "0.0001", "123456.789")
          .map(Decimals::parse)
          .toList();

  private static Unit unit(String symbol) {
    return Units.find(symbol).orElseThrow();
  }

  private static Stream<Unit> units() {
    return Units.symbols().stream().map(UnitsTest::unit);
  }

  private static Stream<Unit> alike(Unit unit) {
    return units().filter(other -> other.dimension() == unit.dimension());
  }

  private static BigFraction number(String text) {
    return Decimals.parse(text);
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
    assertEquals("K", Units.ofDifferences(unit("K(a)")).symbol());
    assertEquals("Δ°F", Units.ofDifferences(unit("°F")).symbol());
    assertEquals("psi", Units.ofDifferences(unit("psi(a)")).symbol());
    assertEquals("V", Units.ofDifferences(unit("V")).symbol());
  }

  /** Every unit against JSR 385 (Indriya, and the customary units of systems-common), exactly. */
  @Test
  void anotherImplementationConvertsAlike() {
    Map<String, javax.measure.Unit<?>> judge = MeasureUnits.all();
    assertEquals(Set.copyOf(Units.symbols()), judge.keySet());
    units().forEach(from -> alike(from).forEach(to -> assertJudged(from, to, judge)));
  }

  private static void assertJudged(Unit from, Unit to, Map<String, javax.measure.Unit<?>> judge) {
    for (BigFraction value : VALUES) {
      assertEquals(
          MeasureUnits.convert(value, judge.get(from.symbol()), judge.get(to.symbol())),
          from.convert(value, to),
          () -> value + " " + from + " to " + to);
    }
  }

  /** What JSR 385 cannot turn into each other must not be of one dimension here. */
  @Test
  void ourDimensionsAreAtLeastAsStrict() {
    Map<String, javax.measure.Unit<?>> judge = MeasureUnits.all();
    units()
        .flatMap(from -> alike(from).map(to -> List.of(from, to)))
        .forEach(
            pair ->
                assertTrue(
                    MeasureUnits.commensurable(
                        judge.get(pair.get(0).symbol()), judge.get(pair.get(1).symbol())),
                    pair::toString));
  }

  @Test
  void aDetourChangesNothing() {
    for (Unit a : units().toList()) {
      for (Unit b : alike(a).toList()) {
        alike(a).forEach(c -> VALUES.forEach(value -> assertDetour(value, a, b, c)));
      }
    }
  }

  private static void assertDetour(BigFraction value, Unit a, Unit b, Unit c) {
    assertEquals(a.convert(value, c), b.convert(a.convert(value, b), c));
  }

  /** The difference of two values converts into the difference of the two converted values. */
  @Test
  void differencesConvertWithoutOffset() {
    for (Unit a : units().toList()) {
      alike(a).forEach(b -> assertDifference(number("12.5"), number("-7.25"), a, b));
    }
  }

  private static void assertDifference(BigFraction x, BigFraction y, Unit a, Unit b) {
    assertEquals(
        a.convert(x, b).subtract(a.convert(y, b)),
        Units.ofDifferences(a).convert(x.subtract(y), Units.ofDifferences(b)));
  }

  /**
   * The exact definitions: international yard and pound agreement (1959), conventional density of
   * mercury 13595.1 kg/m3, standard gravity 9.80665 m/s2 (CGPM 1901), US liquid gallon of 231 cubic
   * inches.
   */
  @ParameterizedTest
  @CsvSource({
    "lb, kg, 0.45359237",
    "in, mm, 25.4",
    "ft, m, 0.3048",
    "gal/min, L/min, 3.785411784",
    "inHg, kPa, 3.386388640341",
    "ft/min, m/s, 0.00508"
  })
  void exactFactors(String from, String to, String factor) {
    assertEquals(number(factor), unit(from).convert(BigFraction.ONE, unit(to)));
  }

  @Test
  void endlessFactorsAreExactToo() {
    BigFraction poundForce = number("0.45359237").multiply(number("9.80665"));
    BigFraction squareInch = number("0.0254").pow(2);
    assertEquals(poundForce.divide(squareInch).divide(100_000), unit("psi(g)").scale());
    assertEquals(BigFraction.of(5, 9), unit("°F").scale());
    assertEquals(BigFraction.of(-160, 9), unit("°F").offset());
  }

  /**
   * NIST Special Publication 811 (2008), appendix B.8; typed from memory, to the digits given
   * there.
   */
  @ParameterizedTest
  @CsvSource({
    "psi, kPa, 6.894757, 0.0000005",
    "inHg, kPa, 3.386389, 0.0000005",
    "lb, kg, 0.45359237, 0",
    "oz, g, 28.34952, 0.000005",
    "ft, m, 0.3048, 0",
    "in, mm, 25.4, 0",
    "gal/min, L/min, 3.785412, 0.0000005",
    "ft/min, m/s, 0.00508, 0",
    "Δ°F, K, 0.5555556, 0.00000005"
  })
  void tabulatedFactors(String from, String to, double factor, double tolerance) {
    double converted = unit(from).convert(BigFraction.ONE, unit(to)).doubleValue();
    assertTrue(Math.abs(converted - factor) <= tolerance + 1e-15, () -> from + ": " + converted);
  }

  /** Fixed points: ice, water boiling at one atmosphere, and where both scales agree. */
  @ParameterizedTest
  @CsvSource({"0, 32, 273.15", "100, 212, 373.15", "-40, -40, 233.15", "65, 149, 338.15"})
  void temperatures(String celsius, String fahrenheit, String kelvin) {
    BigFraction value = number(celsius);
    assertEquals(number(fahrenheit), unit("°C").convert(value, unit("°F")));
    assertEquals(number(kelvin), unit("°C").convert(value, unit("K(a)")));
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void aSystemKeepsWhatBelongsToIt(UnitSystem system) {
    units()
        .forEach(
            unit -> {
              Unit shown = Units.in(unit, system);
              assertEquals(unit.dimension(), shown.dimension(), unit.symbol());
              assertEquals(shown, Units.in(shown, system), unit.symbol());
            });
  }

  /** A unit is foreign to at most one system; what is foreign in one is at home in the other. */
  @Test
  void everyUnitIsAtHomeSomewhere() {
    List<Unit> homeless = new ArrayList<>();
    units()
        .filter(u -> !Units.in(u, UnitSystem.SI).equals(u) && !Units.in(u, UnitSystem.US).equals(u))
        .forEach(homeless::add);
    assertEquals(List.of(), homeless);
  }

  @ParameterizedTest
  @CsvSource({
    "bar(g), psi(g)",
    "bar(a), psi(a)",
    "bar, psi",
    "°C, °F",
    "K, Δ°F",
    "kg, lb",
    "g, oz",
    "mm, in",
    "m, ft",
    "L/min, gal/min",
    "m/s, ft/min",
    "V, V",
    "A, A",
    "Ω, Ω",
    "min, min"
  })
  void counterparts(String si, String us) {
    assertEquals(us, Units.in(unit(si), UnitSystem.US).symbol());
    assertEquals(si, Units.in(unit(us), UnitSystem.SI).symbol());
  }
}
