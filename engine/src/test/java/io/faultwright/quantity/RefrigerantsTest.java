package io.faultwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The saturation lines against published figures.
 *
 * <p>The equation of a fluid and its table come from one paper: these checks cover transcription,
 * units and the choice of bubble or dew, not the measurement.
 */
class RefrigerantsTest {
  private static final double ICE_POINT = 273.15;

  private static Refrigerant of(String id) {
    return Refrigerants.find(id).orElseThrow();
  }

  private static BigFraction number(String text) {
    return Decimals.parse(text);
  }

  private static double kilopascal(Refrigerant fluid, Line line, String celsius) {
    return fluid.pressure(line, number(celsius)).orElseThrow().doubleValue() * 100;
  }

  static Stream<Refrigerant> fluids() {
    return Refrigerants.ids().stream().map(RefrigerantsTest::of);
  }

  /**
   * R-134a: Tillner-Roth and Baehr, J. Phys. Chem. Ref. Data 23:657-729, 1994. R-290: Lemmon,
   * McLinden and Wagner, J. Chem. Eng. Data 54:3141-3180, 2009. Figures from their full equations
   * of state, kPa absolute.
   */
  @ParameterizedTest
  @CsvSource({
    "-40, 51.209, 111.121",
    "-20, 132.735, 244.518",
    "0, 292.803, 474.458",
    "20, 571.707, 836.461",
    "40, 1016.593, 1369.420",
    "60, 1681.784, 2116.753"
  })
  void pureFluids(String celsius, double r134a, double r290) {
    for (Line line : Line.values()) {
      assertNear(r134a, kilopascal(of("R-134a"), line, celsius), 0.001);
      assertNear(r290, kilopascal(of("R-290"), line, celsius), 0.001);
    }
  }

  /** Lemmon, Int. J. Thermophys. 24(4):991-1006, 2003; bubble, then dew, kPa absolute. */
  @ParameterizedTest
  @CsvSource({
    "-40, 135.289, 130.980, 175.498, 174.850",
    "-20, 307.103, 300.180, 400.685, 399.305",
    "0, 610.181, 600.273, 800.705, 798.083",
    "20, 1097.146, 1084.398, 1447.451, 1442.927",
    "40, 1829.543, 1814.949, 2425.642, 2418.609",
    "60, 2885.000, 2871.219, 3842.649, 3834.828"
  })
  void blends(String celsius, double bubble404, double dew404, double bubble410, double dew410) {
    assertNear(bubble404, kilopascal(of("R-404A"), Line.BUBBLE, celsius), 0.001);
    assertNear(dew404, kilopascal(of("R-404A"), Line.DEW, celsius), 0.001);
    assertNear(bubble410, kilopascal(of("R-410A"), Line.BUBBLE, celsius), 0.001);
    assertNear(dew410, kilopascal(of("R-410A"), Line.DEW, celsius), 0.001);
  }

  /**
   * Boiling points at 101.325 kPa: ASHRAE Handbook, Fundamentals, chapter 30; from memory to a
   * hundredth of a degree, an independent computation gave the same.
   */
  @ParameterizedTest
  @CsvSource({
    "R-134a, BUBBLE, -26.07",
    "R-290, BUBBLE, -42.11",
    "R-404A, BUBBLE, -46.22",
    "R-404A, DEW, -45.47",
    "R-410A, BUBBLE, -51.44",
    "R-410A, DEW, -51.36"
  })
  void boilingPoints(String id, Line line, double celsius) {
    assertEquals(
        celsius,
        of(id).temperature(line, Atmosphere.atSeaLevel()).orElseThrow().doubleValue(),
        0.0101);
  }

  /** Suction at 300.0 kPa absolute, line at -12.0 °C: from the equation of the 2003 paper. */
  @Test
  void superheatCountsFromTheDewLine() {
    assertEquals(8.016, -12.0 - celsius(Line.DEW, "3"), 0.0005);
    assertEquals(8.625, -12.0 - celsius(Line.BUBBLE, "3"), 0.0005);
  }

  /** Liquid at 1829.543 kPa absolute, line at 35.0 °C: from the equation of the 2003 paper. */
  @Test
  void subcoolingCountsFromTheBubbleLine() {
    assertEquals(5.000, celsius(Line.BUBBLE, "18.29543") - 35.0, 0.0005);
  }

  private static double celsius(Line line, String bar) {
    return of("R-404A").temperature(line, number(bar)).orElseThrow().doubleValue();
  }

  /** ASHRAE 34: of these, propane alone is flammable. */
  @Test
  void safetyClasses() {
    assertEquals(List.of("R-134a", "R-290", "R-404A", "R-407C", "R-410A", "R-507A"), ids());
    fluids()
        .forEach(
            f ->
                assertEquals(f.id().equals("R-290") ? SafetyClass.A3 : SafetyClass.A1, f.safety()));
  }

  private static List<String> ids() {
    return List.copyOf(Refrigerants.ids());
  }

  /** ISO 817: classes 2L, 2 and 3 burn. */
  @ParameterizedTest
  @EnumSource(SafetyClass.class)
  void aClassBurnsUnlessItsFigureIsOne(SafetyClass safety) {
    assertEquals(!safety.name().endsWith("1"), safety.flammable());
  }

  @ParameterizedTest
  @MethodSource("fluids")
  void theLinesReachFromSixtyBelowZeroToNearTheCriticalPoint(Refrigerant fluid) {
    PublishedFluid published = PublishedFluids.all().get(fluid.id());
    double highest = published.dew().criticalKelvin() - ICE_POINT - 5;
    for (Line line : Line.values()) {
      Interval celsius = fluid.line(line).image();
      assertEquals(-60, celsius.low().orElseThrow().value().doubleValue());
      assertEquals(highest, celsius.high().orElseThrow().value().doubleValue(), 1e-9);
      assertOutside(fluid, line, celsius);
    }
  }

  private static void assertOutside(Refrigerant fluid, Line line, Interval celsius) {
    BigFraction little = number("0.000001");
    BigFraction cold = celsius.low().orElseThrow().value();
    BigFraction hot = celsius.high().orElseThrow().value();
    assertEquals(Optional.empty(), fluid.pressure(line, cold.subtract(little)));
    assertEquals(Optional.empty(), fluid.pressure(line, hot.add(little)));
    Interval bar = fluid.line(line).domain();
    assertEquals(
        Optional.empty(),
        fluid.temperature(line, bar.low().orElseThrow().value().subtract(little)));
    assertEquals(
        Optional.empty(), fluid.temperature(line, bar.high().orElseThrow().value().add(little)));
  }

  /** Between the points too, where a chord is farthest from the curve. */
  @ParameterizedTest
  @MethodSource("fluids")
  void theChordsKeepToTheEquation(Refrigerant fluid) {
    PublishedFluid published = PublishedFluids.all().get(fluid.id());
    assertNear(fluid.bubble(), published.bubble());
    assertNear(fluid.dew(), published.dew());
  }

  private static void assertNear(Polyline line, SaturationEquation equation) {
    for (double celsius : between(line).toArray()) {
      double bar = line.inverse(BigFraction.from(celsius)).orElseThrow().doubleValue();
      assertNear(equation.bar(celsius), bar, 1e-6);
      double back = line.at(BigFraction.from(equation.bar(celsius))).orElseThrow().doubleValue();
      assertEquals(celsius, back, 1e-4);
    }
  }

  /** Three temperatures inside every piece. */
  private static DoubleStream between(Polyline line) {
    return DoubleStream.iterate(0, i -> i + 1)
        .limit(line.knots().size() - 1L)
        .flatMap(i -> inside(line.knots().get((int) i), line.knots().get((int) i + 1)));
  }

  private static DoubleStream inside(Polyline.Knot from, Polyline.Knot to) {
    double low = from.y().doubleValue();
    double width = to.y().doubleValue() - low;
    return DoubleStream.of(0.25, 0.5, 0.75).map(share -> low + share * width);
  }

  @ParameterizedTest
  @MethodSource("fluids")
  void thereAndBackAgain(Refrigerant fluid) {
    for (Line line : Line.values()) {
      between(fluid.line(line))
          .mapToObj(BigFraction::from)
          .forEach(t -> assertEquals(Optional.of(t), thereAndBack(fluid, line, t)));
    }
  }

  private static Optional<BigFraction> thereAndBack(
      Refrigerant fluid, Line line, BigFraction celsius) {
    return fluid.pressure(line, celsius).flatMap(bar -> fluid.temperature(line, bar));
  }

  /** Vapour condenses at or below the pressure at which liquid boils. */
  @ParameterizedTest
  @MethodSource("fluids")
  void dewLiesBelowBubble(Refrigerant fluid) {
    assertEquals(Optional.empty(), SaturationPoint.dewAboveBubble(fluid.bubble(), fluid.dew()));
    between(fluid.dew())
        .mapToObj(BigFraction::from)
        .forEach(t -> assertTrue(pressure(fluid, Line.DEW, t) <= pressure(fluid, Line.BUBBLE, t)));
  }

  private static double pressure(Refrigerant fluid, Line line, BigFraction celsius) {
    return fluid.pressure(line, celsius).orElseThrow().doubleValue();
  }

  @Test
  void blendsGlideAndPureFluidsDoNot() {
    fluids()
        .forEach(
            f -> assertEquals(List.of("R-134a", "R-290").contains(f.id()), f.bubble() == f.dew()));
    assertNotEquals(of("R-507A").bubble().knots(), of("R-507A").dew().knots());
  }

  @Test
  void eachIsWorkedOutOnce() {
    assertSame(of("R-404A"), of("R-404A"));
    assertFalse(Refrigerants.find("R-0").isPresent());
  }

  /** Small numbers keep exact reckoning cheap. */
  @ParameterizedTest
  @MethodSource("fluids")
  void thePointsAreShortDecimals(Refrigerant fluid) {
    for (Line line : Line.values()) {
      fluid
          .line(line)
          .knots()
          .forEach(k -> assertTrue(k.x().getDenominator().bitLength() <= 34, k::toString));
    }
  }

  private static void assertNear(double expected, double actual, double relative) {
    assertEquals(expected, actual, expected * relative);
  }
}
