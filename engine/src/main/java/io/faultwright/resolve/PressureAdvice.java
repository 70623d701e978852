package io.faultwright.resolve;

import io.faultwright.quantity.Atmosphere;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Dimension;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Advice where a gauge pressure and an absolute one are mixed up. What the instrument counts from
 * is known to the person alone; only where one of the two would lie outside the reading's range is
 * it certain.
 */
final class PressureAdvice {
  private static final MathContext DIGITS = new MathContext(4, RoundingMode.HALF_UP);
  private static final Unit BAR = Units.find("bar(a)").orElseThrow();
  private static final Set<Dimension> PRESSURES =
      EnumSet.of(
          Dimension.GAUGE_PRESSURE, Dimension.ABSOLUTE_PRESSURE, Dimension.PRESSURE_DIFFERENCE);

  private PressureAdvice() {}

  /** Whether both are pressures, the wanted one counted from something, and not the same way. */
  static boolean isMixedUp(Unit found, Unit wanted) {
    return PRESSURES.contains(found.dimension())
        && PRESSURES.contains(wanted.dimension())
        && wanted.dimension() != Dimension.PRESSURE_DIFFERENCE
        && found.dimension() != wanted.dimension();
  }

  /**
   * What to write instead.
   *
   * @param number the value that was written, in the unit found
   * @param range of the reading, in the wanted unit
   */
  static String help(BigFraction number, Unit found, Unit wanted, Interval range) {
    BigFraction counted = number.multiply(found.scale()).divide(wanted.scale());
    BigFraction air = Atmosphere.atSeaLevel().multiply(BAR.scale()).divide(wanted.scale());
    boolean gaugeWanted = wanted.dimension() == Dimension.GAUGE_PRESSURE;
    BigFraction shifted = gaugeWanted ? counted.subtract(air) : counted.add(air);
    String asShown = "`" + shown(counted, wanted) + "`";
    String asOther = "`" + shown(shifted, wanted) + "`";
    String kind = gaugeWanted ? "absolute" : "gauge";
    if (!range.contains(shifted)) {
      return "as " + kind + " pressure it would lie outside the range: write " + asShown;
    }
    if (!range.contains(counted)) {
      return "it can only be " + kind + " pressure: write " + asOther + ", at sea level";
    }
    return "does the instrument show 0 in open air? Then it is gauge pressure: write "
        + (gaugeWanted ? asShown : asOther + " (at sea level)")
        + ". Does it show about 1 bar there? Then it is absolute: write "
        + (gaugeWanted ? asOther + " (at sea level)" : asShown);
  }

  /** Help for an absolute pressure below vacuum, which can only be a gauge pressure. */
  static Optional<String> ofBelowVacuum(BigFraction number, Unit unit) {
    if (unit.dimension() != Dimension.ABSOLUTE_PRESSURE || number.signum() >= 0) {
      return Optional.empty();
    }
    BigFraction air = Atmosphere.atSeaLevel().multiply(BAR.scale()).divide(unit.scale());
    return Optional.of(
        "no absolute pressure is below 0, so this is gauge pressure: write `"
            + shown(number.add(air), unit)
            + "`, at sea level");
  }

  private static String shown(BigFraction value, Unit unit) {
    BigDecimal rounded =
        new BigDecimal(value.getNumerator()).divide(new BigDecimal(value.getDenominator()), DIGITS);
    return Decimals.show(Decimals.parse(rounded.toPlainString())) + " " + unit.symbol();
  }
}
