package io.faultwright.layout;

import java.util.List;

/** Finds where branches stand side by side: close together, those between others in the middle. */
final class Spread {
  private final List<Branch> branches;
  private final double[][] least;

  /**
   * Branches to be spread.
   *
   * @param between least distance sideways
   * @param clear least distance up and down; what is further apart may stand above the other
   */
  Spread(List<Branch> branches, double between, double clear) {
    this.branches = branches;
    int count = branches.size();
    this.least = new double[count][count];
    for (int left = 0; left < count; left++) {
      for (int right = left + 1; right < count; right++) {
        least[left][right] = apart(left, right, between, clear);
      }
    }
  }

  /** How far the entries of two branches are at least apart. */
  private double apart(int left, int right, double between, double clear) {
    double apart = 0;
    for (Box one : branches.get(left).boxes()) {
      for (Box other : branches.get(right).boxes()) {
        if (one.y() < other.bottom() + clear && other.y() < one.bottom() + clear) {
          apart = Math.max(apart, one.right() + between - other.x());
        }
      }
    }
    return Grid.up(apart);
  }

  /** The x of each entry, that of the first being 0; whole points. */
  double[] places() {
    int count = branches.size();
    double[] nearest = new double[count];
    for (int i = 1; i < count; i++) {
      for (int left = 0; left < i; left++) {
        nearest[i] = Math.max(nearest[i], nearest[left] + least[left][i]);
      }
    }
    double[] furthest = new double[count];
    furthest[count - 1] = nearest[count - 1];
    for (int i = count - 2; i >= 0; i--) {
      furthest[i] = Double.POSITIVE_INFINITY;
      for (int right = i + 1; right < count; right++) {
        furthest[i] = Math.min(furthest[i], furthest[right] - least[i][right]);
      }
    }
    return between(nearest, furthest);
  }

  /** Halfway: what both ends of a set of least distances keep, every place between them keeps. */
  private static double[] between(double[] nearest, double[] furthest) {
    double[] places = new double[nearest.length];
    for (int i = 1; i < places.length; i++) {
      places[i] = Math.floor((nearest[i] + furthest[i]) / 2);
    }
    return places;
  }
}
