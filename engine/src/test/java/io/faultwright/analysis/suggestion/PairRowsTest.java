package io.faultwright.analysis.suggestion;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.suggestion.PairRows.PairTest;
import io.faultwright.analysis.suggestion.PairRows.Problem;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Few rows, and all wanted pairs; how few against published sizes. */
class PairRowsTest {
  private static final PairTest ALL = (one, level, other, there) -> true;
  private static final PairTest NONE = (one, level, other, there) -> false;

  private static int[] alike(int levels, int factors) {
    int[] counts = new int[factors];
    Arrays.fill(counts, levels);
    return counts;
  }

  private static Problem free(PairTest wanted, int... levels) {
    return new Problem(levels, wanted, PairRowsTest::notToBeAsked, true);
  }

  private static Problem bound(PairTest wanted, Predicate<int[]> allowed, int... levels) {
    return new Problem(levels, wanted, allowed, false);
  }

  private static boolean notToBeAsked(int[] row) {
    throw new AssertionError("asked about " + Arrays.toString(row));
  }

  private static int least(int[] levels) {
    int[] sorted = levels.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length - 1] * sorted[sorted.length - 2];
  }

  private static List<int[]> covering(Problem problem) {
    List<int[]> rows = PairRows.of(problem);
    PairChecks.covers(problem, rows);
    return rows;
  }

  private static void sized(int most, Problem problem) {
    int size = covering(problem).size();
    assertTrue(size <= most, size + " rows");
    assertTrue(size >= least(problem.levels()), size + " rows are too few");
  }

  /**
   * 3^4 has an orthogonal array of 9 rows. Generators that were published reach 15 to 23 rows for
   * 3^13 and 180 to 231 for 10^20 (J. Czerwonka, Pacific Northwest Software Quality Conference,
   * 2006, read in a copy). 4^5 and 5^6 have orthogonal arrays as well, of 16 and 25 rows, since 4
   * and 5 are powers of primes (K. A. Bush, Annals of Mathematical Statistics 23, 1952, from
   * memory).
   */
  @ParameterizedTest
  @CsvSource({"3, 4, 9", "3, 13, 16", "10, 20, 190", "4, 5, 16", "5, 6, 25"})
  void asManyLevelsEach(int levels, int factors, int most) {
    sized(most, free(ALL, alike(levels, factors)));
  }

  /** Two large factors and many small ones: the large ones alone need 20 and 56 rows. */
  @Test
  void mixedLevels() {
    sized(20, free(ALL, 5, 4, 4, 3, 3, 3, 3, 3, 3, 2, 2, 2, 2, 2, 2));
    sized(56, free(ALL, 8, 7, 6, 6, 5, 5, 5, 4, 4, 4, 3, 3, 3, 2, 2, 2));
  }

  /**
   * The fewest rows for two-valued factors (D. J. Kleitman and J. Spencer, Discrete Mathematics 6,
   * 1973): N rows are enough for C(N-1, N/2 rounded up) factors and no more.
   */
  @ParameterizedTest
  @CsvSource({
    "2, 4", "3, 4", "4, 5", "5, 6", "10, 6", "11, 7", "15, 7", "16, 8", "35, 8", "36, 9", "56, 9",
    "57, 10", "100, 10", "126, 10", "127, 11"
  })
  void twoValued(int factors, int rows) {
    assertEquals(rows, covering(free(ALL, alike(2, factors))).size());
  }

  /**
   * Two-valued factors with one pair that is not wanted, so that the rows are searched for. For 100
   * factors published generators need 10 to 16 (J. Czerwonka, as above).
   */
  @ParameterizedTest
  @CsvSource({"4, 5", "10, 6", "15, 7", "100, 12"})
  void twoValuedBySearch(int factors, int most) {
    PairTest wanted = (one, level, other, there) -> other > 1 || level + there > 0;
    int size = covering(free(wanted, alike(2, factors))).size();
    assertTrue(size <= most, size + " rows");
  }

  @Test
  void nothingIsWanted() {
    assertEquals(0, PairRows.of(free(NONE, 3, 3, 3)).size());
    assertEquals(0, PairRows.of(free(ALL)).size());
    assertEquals(0, PairRows.of(free(ALL, 4)).size());
    assertEquals(0, PairRows.of(free(ALL, 2, 0)).size());
  }

  @Test
  void nothingCanBe() {
    assertEquals(0, PairRows.of(bound(ALL, row -> false, 2, 3)).size());
  }

  @Test
  void whatNoPairNeedsStaysOpen() {
    PairTest wanted = (one, level, other, there) -> one == 0 && other == 2 && level + there == 3;
    List<int[]> rows = covering(free(wanted, 2, 4, 3));
    assertEquals(1, rows.size());
    assertArrayEquals(new int[] {1, -1, 2}, rows.get(0));
  }

  /** Pairs in rows that are there already are not wanted, and need no row again. */
  @Test
  void pairsAlreadyCovered() {
    List<int[]> whole = covering(free(ALL, alike(3, 4)));
    List<int[]> there = whole.subList(0, 6);
    PairTest wanted =
        (one, level, other, at) -> there.stream().noneMatch(r -> r[one] == level && r[other] == at);
    assertEquals(3, covering(free(wanted, alike(3, 4))).size());
  }

  /** The last levels of the first two exclude each other; the last two always have the same. */
  @Test
  void someWantedPairsCannotBe() {
    Predicate<int[]> allowed =
        row -> row[0] + row[1] < 4 && (row[2] == row[3] || row[2] < 0 || row[3] < 0);
    Problem problem = bound(ALL, allowed, alike(3, 4));
    assertEquals(1 + 6, PairChecks.impossible(problem));
    List<int[]> rows = covering(problem);
    assertTrue(rows.size() >= 9 && rows.size() <= 10, rows.size() + " rows");
  }

  /**
   * Every pair can be, but not any three levels. By hand: the square 1 0 2 / 0 2 1 / 2 1 0 of third
   * levels does with 9 rows.
   */
  @Test
  void threeTogether() {
    Predicate<int[]> allowed = row -> Arrays.stream(row).filter(level -> level > 0).sum() < 5;
    Problem problem = bound(ALL, allowed, alike(3, 3));
    assertEquals(0, PairChecks.impossible(problem));
    assertEquals(9, covering(problem).size());
  }

  /** Six readings that follow from two others each: some 5000 questions at most. */
  @Test
  void asksRarely() {
    AtomicInteger asked = new AtomicInteger();
    Predicate<int[]> allowed = row -> asked.incrementAndGet() > 0 && differencesHold(row);
    List<int[]> rows = PairRows.of(bound(ALL, allowed, alike(5, 18)));
    assertTrue(asked.get() < 5000, asked + " questions");
    PairChecks.covers(bound(ALL, PairRowsTest::differencesHold, alike(5, 18)), rows);
    assertTrue(rows.size() >= 25 && rows.size() <= 55, rows.size() + " rows");
  }

  /** Whether each third level can be the difference of the two before it, in coarser steps. */
  private static boolean differencesHold(int[] row) {
    return IntStream.range(0, row.length / 3).allMatch(i -> differenceHolds(row, 3 * i));
  }

  private static boolean differenceHolds(int[] row, int at) {
    for (int one = 0; one < 5; one++) {
      for (int two = 0; two < 5; two++) {
        int difference = (one - two + 4) / 2;
        if (is(row[at], one) && is(row[at + 1], two) && is(row[at + 2], difference)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean is(int level, int value) {
    return level < 0 || level == value;
  }

  @Test
  void theSameEveryTime() {
    Problem problem = free(ALL, 4, 3, 3, 2, 5);
    assertArrayEquals(
        PairRows.of(problem).toArray(int[][]::new), PairRows.of(problem).toArray(int[][]::new));
  }
}
