package io.faultwright.quantity;

import java.util.List;

/**
 * A published equation for the pressure on a saturation line: p = p_c exp((T_c/T) sum n theta^t)
 * with theta = 1 - T/T_c.
 *
 * @param criticalKelvin T_c
 * @param criticalKilopascal p_c, absolute
 * @param terms the sum
 */
record SaturationEquation(double criticalKelvin, double criticalKilopascal, List<Term> terms) {
  private static final double ICE_POINT = 273.15;

  /** n theta^t. */
  record Term(double n, double t) {}

  /** The absolute pressure at a temperature; {@code StrictMath} gives every machine the same. */
  double bar(double celsius) {
    double kelvin = celsius + ICE_POINT;
    double theta = 1 - kelvin / criticalKelvin;
    double sum = 0;
    for (Term term : terms) {
      sum += term.n() * StrictMath.pow(theta, term.t());
    }
    return criticalKilopascal / 100 * StrictMath.exp(criticalKelvin / kelvin * sum);
  }
}
