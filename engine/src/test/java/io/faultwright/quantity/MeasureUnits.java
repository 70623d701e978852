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

import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.IncommensurableException;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.apache.commons.numbers.fraction.BigFraction;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.RationalNumber;

/** Our units with prefixes and customary units as the libraries around JSR 385 define them. */
final class MeasureUnits {
  private static final Unit<?> LITRE = CUBIC_METRE.divide(1000);
  private static final Unit<?> DEGREE_FAHRENHEIT = KELVIN.multiply(5).divide(9);

  /** Standard gravity. */
  private static final Unit<?> GRAVITY =
      METRE.divide(SECOND.pow(2)).multiply(980_665).divide(100_000);

  private static final Unit<?> PSI =
      USCustomary.POUND.multiply(GRAVITY).divide(USCustomary.INCH.pow(2));

  /** The conventional density. */
  private static final Unit<?> MERCURY = KILOGRAM.divide(CUBIC_METRE).multiply(135_951).divide(10);

  private final Map<String, Unit<?>> bySymbol = new LinkedHashMap<>();

  private MeasureUnits() {}

  static Map<String, Unit<?>> all() {
    MeasureUnits all = new MeasureUnits();
    all.temperatures();
    all.pressures("(g)");
    all.pressures("(a)");
    all.pressures("");
    all.electrical();
    all.mechanical();
    return all.bySymbol;
  }

  private void temperatures() {
    bySymbol.put("°C", CELSIUS);
    bySymbol.put("°F", DEGREE_FAHRENHEIT.shift(RationalNumber.of(45_967, 100)));
    bySymbol.put("K(a)", KELVIN);
    bySymbol.put("K", KELVIN);
    bySymbol.put("Δ°F", DEGREE_FAHRENHEIT);
  }

  private void pressures(String mark) {
    bySymbol.put("bar" + mark, PASCAL.multiply(100_000));
    bySymbol.put("kPa" + mark, PASCAL.prefix(MetricPrefix.KILO));
    bySymbol.put("MPa" + mark, PASCAL.prefix(MetricPrefix.MEGA));
    bySymbol.put("psi" + mark, PSI);
    bySymbol.put("inHg" + mark, MERCURY.multiply(GRAVITY).multiply(USCustomary.INCH));
  }

  private void electrical() {
    bySymbol.put("V", VOLT);
    bySymbol.put("mV", VOLT.prefix(MetricPrefix.MILLI));
    bySymbol.put("A", AMPERE);
    bySymbol.put("mA", AMPERE.prefix(MetricPrefix.MILLI));
    bySymbol.put("Ω", OHM);
    bySymbol.put("kΩ", OHM.prefix(MetricPrefix.KILO));
    bySymbol.put("MΩ", OHM.prefix(MetricPrefix.MEGA));
    bySymbol.put("Hz", HERTZ);
    bySymbol.put("W", WATT);
    bySymbol.put("kW", WATT.prefix(MetricPrefix.KILO));
  }

  private void mechanical() {
    bySymbol.put("s", SECOND);
    bySymbol.put("min", MINUTE);
    bySymbol.put("h", HOUR);
    bySymbol.put("kg", KILOGRAM);
    bySymbol.put("g", GRAM);
    bySymbol.put("lb", USCustomary.POUND);
    bySymbol.put("oz", USCustomary.OUNCE);
    bySymbol.put("m", METRE);
    bySymbol.put("cm", METRE.prefix(MetricPrefix.CENTI));
    bySymbol.put("mm", METRE.prefix(MetricPrefix.MILLI));
    bySymbol.put("in", USCustomary.INCH);
    bySymbol.put("ft", USCustomary.FOOT);
    bySymbol.put("L/min", LITRE.divide(MINUTE));
    bySymbol.put("gal/min", USCustomary.GALLON_LIQUID.divide(MINUTE));
    bySymbol.put("m/s", METRE.divide(SECOND));
    bySymbol.put("ft/min", USCustomary.FOOT.divide(MINUTE));
    bySymbol.put("%", PERCENT);
    bySymbol.put("times", AbstractUnit.ONE);
  }

  /** Whether JSR 385 itself can turn one unit into the other. */
  static boolean commensurable(Unit<?> from, Unit<?> to) {
    return from.isCompatible(to);
  }

  /**
   * A conversion step by step: as a whole the implementation rounds a factor of 5/9 to 34 digits as
   * soon as something is added.
   */
  static BigFraction convert(BigFraction value, Unit<?> from, Unit<?> to) {
    return Definitions.exactly(converter(from, to), value);
  }

  private static UnitConverter converter(Unit<?> from, Unit<?> to) {
    try {
      return from.getConverterToAny(to);
    } catch (IncommensurableException wrong) {
      throw new AssertionError(wrong);
    }
  }
}
