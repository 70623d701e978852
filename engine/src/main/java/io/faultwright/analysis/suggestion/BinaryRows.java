package io.faultwright.analysis.suggestion;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * The fewest rows in which two-valued factors show all four pairs of any two of them: each factor
 * is its own choice of half of the rows, never of the first. D. J. Kleitman and J. Spencer,
 * Discrete Mathematics 6, 1973; G. Katona, Periodica Mathematica Hungarica 3, 1973.
 */
final class BinaryRows {
  private BinaryRows() {}

  /**
   * @param factors at least two
   */
  static List<int[]> of(int factors) {
    int rows = 4;
    while (columns(rows).compareTo(BigInteger.valueOf(factors)) < 0) {
      rows++;
    }
    List<int[]> made = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      made.add(new int[factors]);
    }
    fill(made, factors);
    return made;
  }

  /** For how many factors some rows are enough. */
  private static BigInteger columns(int rows) {
    BigInteger columns = BigInteger.ONE;
    for (int i = 1; i <= half(rows); i++) {
      columns = columns.multiply(BigInteger.valueOf(rows - i)).divide(BigInteger.valueOf(i));
    }
    return columns;
  }

  private static int half(int rows) {
    return (rows + 1) / 2;
  }

  /** One choice of rows after the other, as the bits of rising numbers with equally many ones. */
  private static void fill(List<int[]> rows, int factors) {
    long chosen = (1L << half(rows.size())) - 1;
    for (int factor = 0; factor < factors; factor++) {
      for (int row = 1; row < rows.size(); row++) {
        rows.get(row)[factor] = (int) (chosen >> (row - 1) & 1);
      }
      long lowest = chosen & -chosen;
      long carried = chosen + lowest;
      chosen = carried | ((chosen ^ carried) / lowest >> 2);
    }
  }
}
