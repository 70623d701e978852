package io.faultwright.layout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/**
 * Where a moment stands on an axis. Time runs evenly; only where something short could not be seen
 * beside something long, the middle of long stretches in which nothing changes is cut out.
 */
final class TimeScale {
  /** Width of a cut, in points. */
  static final double GAP = 8;

  /** Narrower than this, in points, a change cannot be seen beside the one before it. */
  private static final double NARROWEST = 1;

  /** How much of a long stretch may be left, in seconds, the most first. */
  private static final double[] LEFT = {
    86400, 43200, 14400, 7200, 3600, 1800, 1200, 600, 300, 180, 120, 60, 30, 20, 10, 5, 2, 1
  };

  /** Nothing is cut so short that it looks as short as this many of the shortest. */
  private static final double FEWEST = 4;

  private final List<Piece> pieces;
  private final double perSecond;

  /**
   * A part of the axis.
   *
   * @param cut whether it is left out
   */
  record Piece(double from, double to, double left, double right, boolean cut) {
    double x(double moment) {
      return left + (moment - from) / (to - from) * (right - left);
    }
  }

  private TimeScale(List<Double> moments, double left, double width, double most) {
    double shown = 0;
    int cuts = 0;
    for (int i = 1; i < moments.size(); i++) {
      double gap = moments.get(i) - moments.get(i - 1);
      cuts += gap > 2 * most ? 1 : 0;
      shown += gap > 2 * most ? most : gap;
    }
    this.perSecond = (width - cuts * GAP) / shown;
    this.pieces = pieces(moments, left, most);
  }

  private List<Piece> pieces(List<Double> moments, double left, double most) {
    List<Piece> made = new ArrayList<>();
    double x = left;
    double open = moments.get(0);
    for (int i = 1; i < moments.size(); i++) {
      double from = moments.get(i - 1);
      double to = moments.get(i);
      if (to - from > 2 * most) {
        Piece before = even(open, from + most / 2, x);
        Piece cut =
            new Piece(before.to(), to - most / 2, before.right(), before.right() + GAP, true);
        made.add(before);
        made.add(cut);
        open = cut.to();
        x = cut.right();
      }
    }
    made.add(even(open, moments.get(moments.size() - 1), x));
    return made;
  }

  private Piece even(double from, double to, double x) {
    return new Piece(from, to, x, x + (to - from) * perSecond, false);
  }

  /**
   * The scale on which most is seen.
   *
   * @param changes when something changes, the end included
   */
  static TimeScale of(Collection<Double> changes, double left, double width) {
    TreeSet<Double> sorted = new TreeSet<>(changes);
    sorted.add(0.0);
    List<Double> moments = List.copyOf(sorted);
    double shortest = shortest(moments);
    TimeScale scale = new TimeScale(moments, left, width, Double.POSITIVE_INFINITY);
    for (double most : LEFT) {
      if (scale.perSecond * shortest >= NARROWEST || most < FEWEST * shortest) {
        return scale;
      }
      scale = new TimeScale(moments, left, width, most);
    }
    return scale;
  }

  private static double shortest(List<Double> moments) {
    double shortest = moments.get(moments.size() - 1);
    for (int i = 1; i < moments.size(); i++) {
      shortest = Math.min(shortest, moments.get(i) - moments.get(i - 1));
    }
    return shortest;
  }

  /** Where a moment stands. */
  double x(double moment) {
    return pieces.stream()
        .filter(piece -> moment <= piece.to())
        .findFirst()
        .orElseGet(() -> pieces.get(pieces.size() - 1))
        .x(moment);
  }

  /** Width of a second outside of cuts. */
  double perSecond() {
    return perSecond;
  }

  /** What is left out, from left to right. */
  List<Piece> cuts() {
    return pieces.stream().filter(Piece::cut).toList();
  }

  /** What is shown, from left to right. */
  List<Piece> shown() {
    return pieces.stream().filter(piece -> !piece.cut()).toList();
  }
}
