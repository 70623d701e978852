package io.faultwright.quantity;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A strictly rising or strictly falling line through points, straight between them, and nothing
 * outside them. Exact in both directions.
 */
public final class Polyline {
  private final List<Knot> knots;
  private final boolean rising;

  /** A point of the line. */
  public record Knot(BigFraction x, BigFraction y) {}

  private Polyline(List<Knot> knots) {
    this.knots = knots;
    this.rising = knots.get(0).y().compareTo(knots.get(1).y()) < 0;
  }

  /**
   * The line through two or more points.
   *
   * @param knots ascending in x; in y ascending or descending throughout
   * @throws IllegalArgumentException where they are not
   */
  public static Polyline through(List<Knot> knots) {
    if (knots.size() < 2) {
      throw new IllegalArgumentException("a line needs two points: " + knots);
    }
    Polyline line = new Polyline(List.copyOf(knots));
    for (int i = 0; i + 1 < knots.size(); i++) {
      if (!line.goesOn(knots.get(i), knots.get(i + 1))) {
        throw new IllegalArgumentException("not monotone at " + knots.get(i + 1));
      }
    }
    return line;
  }

  private boolean goesOn(Knot from, Knot to) {
    int step = from.y().compareTo(to.y());
    return from.x().compareTo(to.x()) < 0 && (rising ? step < 0 : step > 0);
  }

  public boolean rising() {
    return rising;
  }

  /** The points, ascending in x. */
  public List<Knot> knots() {
    return knots;
  }

  private Knot first() {
    return knots.get(0);
  }

  private Knot last() {
    return knots.get(knots.size() - 1);
  }

  /** Every x that has a y. */
  public Interval domain() {
    return Interval.closed(first().x(), last().x());
  }

  /** Every y that has an x. */
  public Interval image() {
    return rising
        ? Interval.closed(first().y(), last().y())
        : Interval.closed(last().y(), first().y());
  }

  /** The y at an x; empty outside the domain. */
  public Optional<BigFraction> at(BigFraction x) {
    return domain().contains(x) ? Optional.of(along(segment(x), x)) : Optional.empty();
  }

  /** The x at a y; empty outside the image. */
  public Optional<BigFraction> inverse(BigFraction y) {
    return image().contains(y) ? Optional.of(back(y)) : Optional.empty();
  }

  /**
   * Number of the straight piece over an x of the domain; at a knot, the piece that begins there.
   */
  public int segment(BigFraction x) {
    int low = 0;
    int high = knots.size() - 2;
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (knots.get(middle).x().compareTo(x) <= 0) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  /** The straight line of a piece, also beyond its ends. */
  public BigFraction along(int segment, BigFraction x) {
    return knots.get(segment).y().add(x.subtract(knots.get(segment).x()).multiply(slope(segment)));
  }

  /** How steep a piece is. */
  public BigFraction slope(int segment) {
    Knot from = knots.get(segment);
    Knot to = knots.get(segment + 1);
    return to.y().subtract(from.y()).divide(to.x().subtract(from.x()));
  }

  private BigFraction back(BigFraction y) {
    int low = 0;
    int high = knots.size() - 2;
    while (low < high) {
      int middle = (low + high + 1) / 2;
      int order = knots.get(middle).y().compareTo(y);
      if (rising ? order <= 0 : order >= 0) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    Knot from = knots.get(low);
    return from.x().add(y.subtract(from.y()).divide(slope(low)));
  }
}
