package io.faultwright.quantity;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The units a knowledge base may use. Factors are exact by definition: the international pound,
 * inch and ounce (1959), standard gravity for the pound-force, 101325/760 x 25.4 for the inch of
 * mercury.
 */
public final class Units {
  /** One pound-force (0.45359237 kg x 9.80665 m/s2) on a square inch (0.0254 m), in bar. */
  private static final BigFraction PSI =
      Decimals.parse("0.45359237")
          .multiply(Decimals.parse("9.80665"))
          .divide(Decimals.parse("0.0254").pow(2))
          .divide(100_000);

  private static final BigFraction INCH_OF_MERCURY =
      BigFraction.of(101_325, 760).multiply(Decimals.parse("25.4")).divide(100_000);

  private static final Map<String, Unit> BY_SYMBOL = new LinkedHashMap<>();

  static {
    temperatures();
    pressures("(g)", Dimension.GAUGE_PRESSURE);
    pressures("(a)", Dimension.ABSOLUTE_PRESSURE);
    pressures("", Dimension.PRESSURE_DIFFERENCE);
    electrical();
    mechanical();
    counts();
  }

  private Units() {}

  public static Optional<Unit> find(String symbol) {
    return Optional.ofNullable(BY_SYMBOL.get(symbol));
  }

  /** Every symbol that {@link #find} knows, in a fixed order. */
  public static Collection<String> symbols() {
    return Collections.unmodifiableSet(BY_SYMBOL.keySet());
  }

  /**
   * The unit of the same size for differences: K for °C, bar for bar(g), mostly the unit itself.
   */
  public static Unit ofDifferences(Unit unit) {
    return switch (unit.dimension()) {
      case TEMPERATURE -> BY_SYMBOL.get(unit.symbol().equals("°C") ? "K" : "Δ°F");
      case GAUGE_PRESSURE, ABSOLUTE_PRESSURE ->
          BY_SYMBOL.get(unit.symbol().replaceFirst("\\([ga]\\)$", ""));
      default -> unit;
    };
  }

  private static void temperatures() {
    add("°C", Dimension.TEMPERATURE, BigFraction.ONE);
    put("°F", Dimension.TEMPERATURE, BigFraction.of(5, 9), BigFraction.of(-160, 9));
    add("K", Dimension.TEMPERATURE_DIFFERENCE, BigFraction.ONE);
    add("Δ°F", Dimension.TEMPERATURE_DIFFERENCE, BigFraction.of(5, 9));
  }

  private static void pressures(String mark, Dimension dimension) {
    add("bar" + mark, dimension, BigFraction.ONE);
    add("kPa" + mark, dimension, BigFraction.of(1, 100));
    add("MPa" + mark, dimension, BigFraction.of(10));
    add("psi" + mark, dimension, PSI);
    add("inHg" + mark, dimension, INCH_OF_MERCURY);
  }

  private static void electrical() {
    add("V", Dimension.VOLTAGE, BigFraction.ONE);
    add("mV", Dimension.VOLTAGE, BigFraction.of(1, 1000));
    add("A", Dimension.CURRENT, BigFraction.ONE);
    add("mA", Dimension.CURRENT, BigFraction.of(1, 1000));
    add("Ω", Dimension.RESISTANCE, BigFraction.ONE);
    add("kΩ", Dimension.RESISTANCE, BigFraction.of(1000));
    add("MΩ", Dimension.RESISTANCE, BigFraction.of(1_000_000));
    add("Hz", Dimension.FREQUENCY, BigFraction.ONE);
    add("W", Dimension.POWER, BigFraction.ONE);
    add("kW", Dimension.POWER, BigFraction.of(1000));
  }

  private static void mechanical() {
    add("s", Dimension.TIME, BigFraction.ONE);
    add("min", Dimension.TIME, BigFraction.of(60));
    add("h", Dimension.TIME, BigFraction.of(3600));
    add("kg", Dimension.MASS, BigFraction.ONE);
    add("g", Dimension.MASS, BigFraction.of(1, 1000));
    add("lb", Dimension.MASS, Decimals.parse("0.45359237"));
    add("oz", Dimension.MASS, Decimals.parse("0.45359237").divide(16));
    add("m", Dimension.LENGTH, BigFraction.ONE);
    add("cm", Dimension.LENGTH, BigFraction.of(1, 100));
    add("mm", Dimension.LENGTH, BigFraction.of(1, 1000));
    add("in", Dimension.LENGTH, Decimals.parse("0.0254"));
    add("L/min", Dimension.FLOW, BigFraction.ONE);
    add("m/s", Dimension.SPEED, BigFraction.ONE);
  }

  private static void counts() {
    add("%", Dimension.RATIO, BigFraction.of(1, 100));
    add("times", Dimension.COUNT, BigFraction.ONE);
  }

  private static void add(String symbol, Dimension dimension, BigFraction scale) {
    put(symbol, dimension, scale, BigFraction.ZERO);
  }

  private static void put(
      String symbol, Dimension dimension, BigFraction scale, BigFraction offset) {
    BY_SYMBOL.put(symbol, new Unit(symbol, dimension, scale, offset));
  }
}
