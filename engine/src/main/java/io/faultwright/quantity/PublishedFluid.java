package io.faultwright.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A refrigerant as a paper gives it.
 *
 * @param bubble for pressures over boiling liquid
 * @param dew for pressures over condensing vapour; for a pure fluid the same
 */
record PublishedFluid(
    SafetyClass safety, SaturationEquation bubble, SaturationEquation dew, String source) {
  private static final BigDecimal LOWEST = BigDecimal.valueOf(-60);

  /** Nearer to the critical point some of the equations do not rise throughout. */
  private static final BigDecimal BELOW_CRITICAL = BigDecimal.valueOf(5);

  private static final BigDecimal ICE_POINT = new BigDecimal("273.15");

  Refrigerant named(String id) {
    Polyline bubbles = line(bubble);
    Polyline drops = dew.equals(bubble) ? bubbles : line(dew);
    return new Refrigerant(id, safety, bubbles, drops, source);
  }

  /** In degrees Celsius. */
  private static BigDecimal highest(SaturationEquation equation) {
    return BigDecimal.valueOf(equation.criticalKelvin())
        .subtract(ICE_POINT)
        .subtract(BELOW_CRITICAL);
  }

  private static Polyline line(SaturationEquation equation) {
    BigDecimal highest = highest(equation);
    List<SaturationPoint> points = new ArrayList<>();
    for (BigDecimal t = LOWEST; t.compareTo(highest) < 0; t = t.add(step(t))) {
      points.add(point(equation, t));
    }
    points.add(point(equation, highest));
    return SaturationPoint.line(points);
  }

  private static SaturationPoint point(SaturationEquation equation, BigDecimal celsius) {
    return new SaturationPoint(
        Decimals.of(celsius), Decimals.rounded(equation.bar(celsius.doubleValue())));
  }

  /**
   * Kelvin to the next point: so near that the chord stays within a millionth of the pressure. The
   * curve bends most, measured by the pressure, where it is cold.
   */
  private static BigDecimal step(BigDecimal celsius) {
    if (celsius.compareTo(BigDecimal.valueOf(-40)) < 0) {
      return new BigDecimal("0.04");
    }
    return new BigDecimal(celsius.signum() < 0 ? "0.05" : "0.08");
  }
}
