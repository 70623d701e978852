package io.faultwright.quantity;

import static tech.units.indriya.unit.Units.AMPERE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HERTZ;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.OHM;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.VOLT;
import static tech.units.indriya.unit.Units.WATT;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.apache.commons.numbers.fraction.BigFraction;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.AddConverter;
import tech.units.indriya.function.RationalNumber;

/**
 * What each unit is, said with JSR 385; the only user of it. Exact by definition: the international
 * pound, inch, foot and ounce (1959), the US liquid gallon of 231 cubic inches, standard gravity
 * for the pound-force, conventional mercury for the inch of it.
 */
final class Definitions {
  private static final Unit<?> LITRE = CUBIC_METRE.divide(1000);
  private static final Unit<?> DEGREE_FAHRENHEIT = KELVIN.multiply(5).divide(9);

  /** Standard gravity. */
  private static final Unit<?> GRAVITY =
      METRE.divide(SECOND.pow(2)).multiply(980_665).divide(100_000);

  private static final Unit<?> POUND = KILOGRAM.multiply(45_359_237).divide(100_000_000);
  private static final Unit<?> INCH = METRE.multiply(254).divide(10_000);
  private static final Unit<?> FOOT = INCH.multiply(12);
  private static final Unit<?> GALLON = INCH.pow(3).multiply(231);

  private static final Unit<?> PSI = POUND.multiply(GRAVITY).divide(INCH.pow(2));

  /** The conventional density. */
  private static final Unit<?> MERCURY = KILOGRAM.divide(CUBIC_METRE).multiply(135_951).divide(10);

  private static final Unit<?> BAR = PASCAL.multiply(100_000);
  private static final Unit<?> INCH_OF_MERCURY = MERCURY.multiply(GRAVITY).multiply(INCH);

  private final Map<String, io.faultwright.quantity.Unit> bySymbol = new LinkedHashMap<>();

  private Definitions() {}

  /** Every unit, in a fixed order. */
  static Map<String, io.faultwright.quantity.Unit> all() {
    Definitions all = new Definitions();
    all.temperatures();
    all.pressures("(g)", Dimension.GAUGE_PRESSURE);
    all.pressures("(a)", Dimension.ABSOLUTE_PRESSURE);
    all.pressures("", Dimension.PRESSURE_DIFFERENCE);
    all.electrical();
    all.timesAndMasses();
    all.lengthsAndFlows();
    all.counts();
    return all.bySymbol;
  }

  private void temperatures() {
    add("°C", Dimension.TEMPERATURE, CELSIUS, CELSIUS);
    Unit<?> fahrenheit = DEGREE_FAHRENHEIT.shift(RationalNumber.of(45_967, 100));
    add("°F", Dimension.TEMPERATURE, fahrenheit, CELSIUS);
    add("K(a)", Dimension.TEMPERATURE, KELVIN, CELSIUS);
    add("K", Dimension.TEMPERATURE_DIFFERENCE, KELVIN, KELVIN);
    add("Δ°F", Dimension.TEMPERATURE_DIFFERENCE, DEGREE_FAHRENHEIT, KELVIN);
  }

  private void pressures(String mark, Dimension dimension) {
    add("bar" + mark, dimension, BAR, BAR);
    add("kPa" + mark, dimension, PASCAL.multiply(1_000), BAR);
    add("MPa" + mark, dimension, PASCAL.multiply(1_000_000), BAR);
    add("psi" + mark, dimension, PSI, BAR);
    add("inHg" + mark, dimension, INCH_OF_MERCURY, BAR);
  }

  private void electrical() {
    add("V", Dimension.VOLTAGE, VOLT, VOLT);
    add("mV", Dimension.VOLTAGE, VOLT.divide(1_000), VOLT);
    add("A", Dimension.CURRENT, AMPERE, AMPERE);
    add("mA", Dimension.CURRENT, AMPERE.divide(1_000), AMPERE);
    add("Ω", Dimension.RESISTANCE, OHM, OHM);
    add("kΩ", Dimension.RESISTANCE, OHM.multiply(1_000), OHM);
    add("MΩ", Dimension.RESISTANCE, OHM.multiply(1_000_000), OHM);
    add("Hz", Dimension.FREQUENCY, HERTZ, HERTZ);
    add("W", Dimension.POWER, WATT, WATT);
    add("kW", Dimension.POWER, WATT.multiply(1_000), WATT);
  }

  private void timesAndMasses() {
    add("s", Dimension.TIME, SECOND, SECOND);
    add("min", Dimension.TIME, MINUTE, SECOND);
    add("h", Dimension.TIME, HOUR, SECOND);
    add("kg", Dimension.MASS, KILOGRAM, KILOGRAM);
    add("g", Dimension.MASS, GRAM, KILOGRAM);
    add("lb", Dimension.MASS, POUND, KILOGRAM);
    add("oz", Dimension.MASS, POUND.divide(16), KILOGRAM);
  }

  private void lengthsAndFlows() {
    add("m", Dimension.LENGTH, METRE, METRE);
    add("cm", Dimension.LENGTH, METRE.divide(100), METRE);
    add("mm", Dimension.LENGTH, METRE.divide(1_000), METRE);
    add("in", Dimension.LENGTH, INCH, METRE);
    add("ft", Dimension.LENGTH, FOOT, METRE);
    add("L/min", Dimension.FLOW, LITRE.divide(MINUTE), LITRE.divide(MINUTE));
    add("gal/min", Dimension.FLOW, GALLON.divide(MINUTE), LITRE.divide(MINUTE));
    add("m/s", Dimension.SPEED, METRE.divide(SECOND), METRE.divide(SECOND));
    add("ft/min", Dimension.SPEED, FOOT.divide(MINUTE), METRE.divide(SECOND));
  }

  private void counts() {
    add("%", Dimension.RATIO, PERCENT, AbstractUnit.ONE);
    add("times", Dimension.COUNT, AbstractUnit.ONE, AbstractUnit.ONE);
  }

  /** A conversion is a straight line: two of its points give it. */
  private void add(String symbol, Dimension dimension, Unit<?> unit, Unit<?> base) {
    UnitConverter toBase = converter(unit, base);
    BigFraction offset = exactly(toBase, BigFraction.ZERO);
    BigFraction scale = exactly(toBase, BigFraction.ONE).subtract(offset);
    bySymbol.put(symbol, new io.faultwright.quantity.Unit(symbol, dimension, scale, offset));
  }

  /**
   * Step by step: as a whole the implementation rounds a factor of 5/9 to 34 digits as soon as
   * something is added to it.
   */
  static BigFraction exactly(UnitConverter converter, BigFraction value) {
    BigFraction result = value;
    List<? extends UnitConverter> steps = converter.getConversionSteps();
    for (int i = steps.size() - 1; i >= 0; i--) {
      result = step(result, steps.get(i));
    }
    return result;
  }

  private static BigFraction step(BigFraction value, UnitConverter step) {
    if (step.isIdentity()) {
      return value;
    }
    return step instanceof AddConverter add
        ? value.add(fraction(add.getOffset()))
        : value.multiply(fraction(step.convert((Number) RationalNumber.ONE)));
  }

  private static UnitConverter converter(Unit<?> from, Unit<?> to) {
    try {
      return from.getConverterToAny(to);
    } catch (IncommensurableException wrong) {
      throw new IllegalStateException(wrong);
    }
  }

  private static BigFraction fraction(Number value) {
    if (value instanceof RationalNumber rational) {
      return BigFraction.of(rational.getDividend(), rational.getDivisor());
    }
    return Decimals.parse(new BigDecimal(value.toString()).toPlainString());
  }
}
