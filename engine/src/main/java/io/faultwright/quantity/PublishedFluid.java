package io.faultwright.quantity;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A refrigerant as a paper gives it.
 *
 * @param bubble for pressures over boiling liquid
 * @param dew for pressures over condensing vapour; for a pure fluid the same
 */
record PublishedFluid(
    SafetyClass safety, SaturationEquation bubble, SaturationEquation dew, String source) {
  /** Temperatures here are whole thousandths of a degree Celsius. */
  private static final int LOWEST = -60_000;

  /** Nearer to the critical point some of the equations do not rise throughout. */
  private static final int BELOW_CRITICAL = 5_000;

  private static final int ICE_POINT = 273_150;

  Refrigerant named(String id) {
    Polyline bubbles = line(bubble);
    Polyline drops = dew.equals(bubble) ? bubbles : line(dew);
    return new Refrigerant(id, safety, bubbles, drops, source);
  }

  private static int highest(SaturationEquation equation) {
    return (int) Math.round(equation.criticalKelvin() * 1000) - ICE_POINT - BELOW_CRITICAL;
  }

  private static Polyline line(SaturationEquation equation) {
    int highest = highest(equation);
    List<SaturationPoint> points = new ArrayList<>();
    for (int t = LOWEST; t < highest; t += step(t)) {
      points.add(point(equation, t));
    }
    points.add(point(equation, highest));
    return SaturationPoint.line(points);
  }

  private static SaturationPoint point(SaturationEquation equation, int thousandths) {
    return new SaturationPoint(
        BigFraction.of(thousandths, 1000), Decimals.rounded(equation.bar(thousandths / 1000.0)));
  }

  /**
   * How far to the next point: so near that the chord stays within a millionth of the pressure. The
   * curve bends most, measured by the pressure, where it is cold.
   */
  private static int step(int thousandths) {
    if (thousandths < -40_000) {
      return 40;
    }
    return thousandths < 0 ? 50 : 80;
  }
}
