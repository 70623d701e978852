package io.faultwright.analysis.suggestion;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.suggestion.PairRows.PairTest;
import io.faultwright.analysis.suggestion.PairRows.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Random small problems, in which what can be is found by looking at every full row. */
class RandomPairsTest {
  private static final int PROBLEMS = 200;

  @Test
  void allWantedPairsInRowsThatCanBe() {
    int unmet = 0;
    int rows = 0;
    for (int seed = 0; seed < PROBLEMS; seed++) {
      Problem problem = problem(new Random(seed));
      List<int[]> found = PairRows.of(problem);
      PairChecks.covers(problem, found);
      unmet += PairChecks.impossible(problem);
      rows += found.size();
    }
    assertTrue(unmet > PROBLEMS && rows > PROBLEMS, unmet + " impossible, " + rows + " rows");
  }

  private static Problem problem(Random random) {
    int[] levels = new int[3 + random.nextInt(4)];
    for (int factor = 0; factor < levels.length; factor++) {
      levels[factor] = 1 + random.nextInt(4);
    }
    List<int[]> full = fullRows(levels);
    int percent = 3 + random.nextInt(97);
    full.removeIf(row -> random.nextInt(100) >= percent);
    return new Problem(levels, wanted(random), row -> canBe(row, full), false);
  }

  private static PairTest wanted(Random random) {
    Set<Integer> unwanted = new HashSet<>();
    for (int i = random.nextInt(200); i > 0; i--) {
      unwanted.add(random.nextInt(8 * 8 * 8 * 8));
    }
    return (one, level, other, there) ->
        !unwanted.contains(((one * 8 + level) * 8 + other) * 8 + there);
  }

  private static boolean canBe(int[] row, List<int[]> full) {
    return full.stream().anyMatch(whole -> isPart(row, whole));
  }

  private static boolean isPart(int[] row, int[] whole) {
    for (int factor = 0; factor < row.length; factor++) {
      if (row[factor] >= 0 && row[factor] != whole[factor]) {
        return false;
      }
    }
    return true;
  }

  private static List<int[]> fullRows(int[] levels) {
    List<int[]> rows = new ArrayList<>(List.of(new int[levels.length]));
    for (int factor = 0; factor < levels.length; factor++) {
      List<int[]> more = new ArrayList<>();
      for (int[] row : rows) {
        for (int level = 0; level < levels[factor]; level++) {
          int[] next = row.clone();
          next[factor] = level;
          more.add(next);
        }
      }
      rows = more;
    }
    return rows;
  }
}
