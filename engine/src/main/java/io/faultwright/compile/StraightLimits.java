package io.faultwright.compile;

import io.faultwright.model.Build;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Between;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.quantity.Exact;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Interpolated limits of one build, each end between two rows as a straight line worked out
 * beforehand. Says where a value lies without working out the limits there; exact, and empty where
 * that would not be quick.
 */
final class StraightLimits {
  private static final long MOST = 1L << 31;

  private final List<Piece> pieces;

  private StraightLimits(List<Piece> pieces) {
    this.pieces = pieces;
  }

  /** A point {@code (rise * driver + start) / scale}; absent ends are no limits. */
  private record Line(long rise, long start, long scale) {
    static Optional<Line> through(
        BigFraction from, BigFraction to, BigFraction low, BigFraction high) {
      BigFraction rise = high.subtract(low).divide(to.subtract(from));
      BigFraction start = low.subtract(rise.multiply(from));
      BigFraction scale =
          BigFraction.of(rise.getDenominator().abs()).multiply(start.getDenominator().abs());
      BigFraction up = rise.multiply(scale);
      BigFraction base = start.multiply(scale);
      return isSmall(up) && isSmall(base) && isSmall(scale)
          ? Optional.of(new Line(up.longValue(), base.longValue(), scale.longValue()))
          : Optional.empty();
    }

    private static boolean isSmall(BigFraction number) {
      return number.abs().compareTo(BigFraction.of(MOST)) < 0;
    }

    /** Sign of how far a value lies over the line; {@code valueDown} and {@code driverDown} > 0. */
    int over(long valueUp, long valueDown, long driverUp, long driverDown) {
      long line =
          Math.addExact(Math.multiplyExact(rise, driverUp), Math.multiplyExact(start, driverDown));
      return Long.compare(
          Math.multiplyExact(Math.multiplyExact(valueUp, scale), driverDown),
          Math.multiplyExact(line, valueDown));
    }
  }

  /** The limits between two rows. */
  private record Piece(BigFraction from, BigFraction to, Optional<Line> low, Optional<Line> high) {}

  /** Empty where the limits of the build are not of this kind. */
  static Optional<StraightLimits> of(LimitsTable table, Build build) {
    List<Row> rows =
        table.rows().stream()
            .filter(row -> build.satisfies(row.builds()))
            .filter(row -> !row.at().isEmpty())
            .sorted(Comparator.comparing(StraightLimits::at))
            .toList();
    Set<BigFraction> points = new HashSet<>();
    rows.forEach(row -> points.add(at(row)));
    boolean plain =
        table.between().equals(Optional.of(Between.INTERPOLATE))
            && table.drivers().size() == 1
            && points.size() == rows.size()
            && rows.size()
                == table.rows().stream().filter(r -> build.satisfies(r.builds())).count();
    return plain ? pieces(rows).map(StraightLimits::new) : Optional.empty();
  }

  private static BigFraction at(Row row) {
    return row.at().get(0).low().orElseThrow().value();
  }

  private static Optional<List<Piece>> pieces(List<Row> rows) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i + 1 < rows.size(); i++) {
      Row from = rows.get(i);
      Row to = rows.get(i + 1);
      Optional<Line> low = line(from, to, from.low(), to.low());
      Optional<Line> high = line(from, to, from.high(), to.high());
      boolean whole =
          low.isPresent() == (from.low().isPresent() && to.low().isPresent())
              && high.isPresent() == (from.high().isPresent() && to.high().isPresent());
      if (!whole) {
        return Optional.empty();
      }
      pieces.add(new Piece(at(from), at(to), low, high));
    }
    return Optional.of(pieces);
  }

  private static Optional<Line> line(
      Row from, Row to, Optional<BigFraction> low, Optional<BigFraction> high) {
    return low.flatMap(start -> high.flatMap(end -> Line.through(at(from), at(to), start, end)));
  }

  /** Where a value lies; empty where the driver is not strictly between two rows. */
  Optional<Side> side(BigFraction value, BigFraction driver) {
    for (Piece piece : pieces) {
      if (Exact.compare(driver, piece.to()) < 0) {
        return Exact.compare(driver, piece.from()) > 0
            ? side(piece, value, driver)
            : Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static Optional<Side> side(Piece piece, BigFraction value, BigFraction driver) {
    if (!isQuick(value) || !isQuick(driver)) {
      return Optional.empty();
    }
    long up = value.getNumerator().longValue();
    long down = value.getDenominator().longValue();
    long driverUp = driver.getNumerator().longValue();
    long driverDown = driver.getDenominator().longValue();
    try {
      if (piece.low().isPresent() && piece.low().get().over(up, down, driverUp, driverDown) < 0) {
        return Optional.of(Side.BELOW);
      }
      return piece.high().isPresent() && piece.high().get().over(up, down, driverUp, driverDown) > 0
          ? Optional.of(Side.ABOVE)
          : Optional.of(Side.WITHIN);
    } catch (ArithmeticException large) {
      return Optional.empty();
    }
  }

  private static boolean isQuick(BigFraction number) {
    return number.getNumerator().bitLength() < 32
        && number.getDenominator().bitLength() < 32
        && number.getDenominator().signum() > 0;
  }
}
