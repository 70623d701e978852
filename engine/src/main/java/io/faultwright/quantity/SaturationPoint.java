package io.faultwright.quantity;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One entry of a saturation table.
 *
 * @param celsius temperature
 * @param bar absolute pressure
 */
public record SaturationPoint(BigFraction celsius, BigFraction bar) {
  /** The number of the first point that does not lie above its predecessor in both figures. */
  public static OptionalInt firstBreak(List<SaturationPoint> table) {
    return IntStream.range(1, table.size())
        .filter(i -> !table.get(i).isAbove(table.get(i - 1)))
        .findFirst();
  }

  private boolean isAbove(SaturationPoint other) {
    return celsius.compareTo(other.celsius) > 0 && bar.compareTo(other.bar) > 0;
  }

  /**
   * The line through a table, from absolute bar to degrees Celsius.
   *
   * @throws IllegalArgumentException for fewer than two points or at {@link #firstBreak}
   */
  public static Polyline line(List<SaturationPoint> table) {
    return Polyline.through(table.stream().map(p -> new Polyline.Knot(p.bar, p.celsius)).toList());
  }

  /**
   * The lowest temperature of either table at which vapour would condense above the pressure at
   * which liquid boils: no fluid does, so a table is wrong.
   */
  public static Optional<BigFraction> dewAboveBubble(Polyline bubble, Polyline dew) {
    return Stream.of(bubble, dew)
        .flatMap(line -> line.knots().stream())
        .map(Polyline.Knot::y)
        .filter(t -> crossed(bubble, dew, t))
        .min(BigFraction::compareTo);
  }

  private static boolean crossed(Polyline bubble, Polyline dew, BigFraction celsius) {
    return bubble
        .inverse(celsius)
        .flatMap(b -> dew.inverse(celsius).map(d -> d.compareTo(b) > 0))
        .orElse(false);
  }
}
