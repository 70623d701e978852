package io.faultwright.quantity;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The pressure of the air, which a gauge counts from: the standard atmosphere (ISO 2533), p =
 * 101.325 (1 - 2.25577e-5 h)^5.25588 kPa.
 */
public final class Atmosphere {
  private static final int HIGHEST = 5000;

  /** Metres from point to point; the chord stays within two millionths of the pressure. */
  private static final int STEP = 25;

  private Atmosphere() {}

  /** From metres above sea level, 0 to 5000, to absolute bar. */
  public static Polyline overAltitude() {
    return Lazily.OVER_ALTITUDE;
  }

  /** In bar, exact by definition. */
  public static BigFraction atSeaLevel() {
    return BigFraction.of(101_325, 100_000);
  }

  static double bar(double metres) {
    return 1.01325 * StrictMath.pow(1 - 2.25577e-5 * metres, 5.25588);
  }

  /** Worked out when first asked for. */
  private static final class Lazily {
    private static final Polyline OVER_ALTITUDE = Polyline.through(knots());

    private static List<Polyline.Knot> knots() {
      return IntStream.rangeClosed(0, HIGHEST / STEP)
          .map(i -> i * STEP)
          .mapToObj(h -> new Polyline.Knot(BigFraction.of(h), Decimals.rounded(bar(h))))
          .toList();
    }
  }
}
