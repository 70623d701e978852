package io.faultwright.quantity;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A refrigerant and its saturation lines.
 *
 * @param id as the trade writes it, for instance {@code R-404A}
 * @param bubble from absolute bar to degrees Celsius
 * @param dew from absolute bar to degrees Celsius
 * @param source where the lines come from
 */
public record Refrigerant(
    String id, SafetyClass safety, Polyline bubble, Polyline dew, String source) {
  public Polyline line(Line line) {
    return line == Line.BUBBLE ? bubble : dew;
  }

  /** The saturation temperature in degrees Celsius; empty where the line does not reach. */
  public Optional<BigFraction> temperature(Line line, BigFraction absoluteBar) {
    return line(line).at(absoluteBar);
  }

  /** The saturation pressure in absolute bar; empty where the line does not reach. */
  public Optional<BigFraction> pressure(Line line, BigFraction celsius) {
    return line(line).inverse(celsius);
  }
}
