package io.faultwright.guided;

import io.faultwright.json.Fields;
import io.faultwright.quantity.Atmosphere;
import io.faultwright.quantity.Polyline;
import io.faultwright.quantity.Refrigerant;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Curves, point by point and exact, in few bytes: whole numbers over one denominator, of which only
 * the differences of differences are told.
 */
final class CurveData {
  /** The name of the curve that is not a refrigerant's. */
  static final String ALTITUDE = "altitude";

  /** Differences are taken so often; those of a smooth curve are then small. */
  private static final int ORDER = 3;

  private CurveData() {}

  static byte[] altitude() {
    return Script.call(
        "curve", ALTITUDE, new Fields().put(ALTITUDE, of(Atmosphere.overAltitude())));
  }

  static byte[] of(Refrigerant refrigerant) {
    Fields lines = new Fields().put("dew", of(refrigerant.dew()));
    if (!refrigerant.bubble().equals(refrigerant.dew())) {
      lines.put("bubble", of(refrigerant.bubble()));
    }
    return Script.call("curve", refrigerant.id(), lines);
  }

  private static Fields of(Polyline line) {
    return new Fields()
        .put("x", column(line, Polyline.Knot::x))
        .put("y", column(line, Polyline.Knot::y));
  }

  private static List<Object> column(
      Polyline line, Function<Polyline.Knot, BigFraction> coordinate) {
    List<BigFraction> values = line.knots().stream().map(coordinate).toList();
    BigInteger denominator =
        values.stream()
            .map(BigFraction::getDenominator)
            .reduce(BigInteger.ONE, CurveData::multiple);
    List<BigInteger> numbers =
        values.stream().map(value -> value.multiply(denominator).getNumerator()).toList();
    List<Object> column = new ArrayList<>(List.of(denominator.toString(), ORDER));
    differences(numbers).forEach(number -> column.add(shortest(number)));
    return column;
  }

  private static BigInteger multiple(BigInteger one, BigInteger other) {
    return one.multiply(other).divide(one.gcd(other));
  }

  private static List<BigInteger> differences(List<BigInteger> numbers) {
    List<BigInteger> current = numbers;
    for (int i = 0; i < ORDER; i++) {
      List<BigInteger> next = new ArrayList<>();
      BigInteger before = BigInteger.ZERO;
      for (BigInteger number : current) {
        next.add(number.subtract(before));
        before = number;
      }
      current = next;
    }
    return current;
  }

  private static Object shortest(BigInteger number) {
    return number.abs().compareTo(BigInteger.valueOf(Integer.MAX_VALUE)) <= 0
        ? (Object) number.intValueExact()
        : number.toString();
  }
}
