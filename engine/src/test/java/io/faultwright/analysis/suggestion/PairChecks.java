package io.faultwright.analysis.suggestion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.suggestion.PairRows.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Judges rows pair by pair, without any of the searcher's own bookkeeping. */
final class PairChecks {
  private static final int OPEN = -1;

  private PairChecks() {}

  /** Each wanted pair that can be stands in a row, and each row can be. */
  static void covers(Problem problem, List<int[]> rows) {
    for (int[] row : rows) {
      assertTrue(canBe(problem, row), Arrays.toString(row));
    }
    List<String> missing = new ArrayList<>();
    for (int[] pair : wanted(problem)) {
      if (canBe(problem, pair) && rows.stream().noneMatch(row -> holds(row, pair))) {
        missing.add(Arrays.toString(pair));
      }
    }
    assertEquals(List.of(), missing);
  }

  /** How many wanted pairs cannot be. */
  static int impossible(Problem problem) {
    return (int) wanted(problem).stream().filter(pair -> !canBe(problem, pair)).count();
  }

  /** Each wanted pair as a row with nothing else. */
  private static List<int[]> wanted(Problem problem) {
    List<int[]> wanted = new ArrayList<>();
    for (int one = 0; one < problem.levels().length; one++) {
      for (int other = one + 1; other < problem.levels().length; other++) {
        for (int level = 0; level < problem.levels()[one]; level++) {
          for (int there = 0; there < problem.levels()[other]; there++) {
            if (problem.wanted().test(one, level, other, there)) {
              wanted.add(pair(problem, one, level, other, there));
            }
          }
        }
      }
    }
    return wanted;
  }

  private static int[] pair(Problem problem, int one, int level, int other, int there) {
    int[] row = new int[problem.levels().length];
    Arrays.fill(row, OPEN);
    row[one] = level;
    row[other] = there;
    return row;
  }

  private static boolean canBe(Problem problem, int[] row) {
    return problem.free() || problem.allowed().test(row);
  }

  private static boolean holds(int[] row, int[] pair) {
    for (int factor = 0; factor < row.length; factor++) {
      if (pair[factor] != OPEN && pair[factor] != row[factor]) {
        return false;
      }
    }
    return true;
  }
}
