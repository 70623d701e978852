package io.faultwright.analysis.suggestion;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Predicate;

/**
 * Few rows in which all wanted pairs of levels stand together (2-way covering arrays, with
 * constraints). The same problem always gives the same rows.
 *
 * <p>Rows are put together greedily ({@link GreedyRows}), then one after the other is saved by
 * changing the rest ({@link FewerRows}). Where nothing but two-valued factors are to be paired, the
 * exact answer is known ({@link BinaryRows}).
 */
final class PairRows {
  private static final long SEED = 1997;

  private final Levels levels;
  private final Refusals refusals;
  private final Cover wanted;

  /**
   * What is paired.
   *
   * @param levels for each factor, how many it has
   * @param wanted whether a pair must be covered; a pair that cannot be is left out all the same
   * @param allowed whether a row, -1 where a factor is open, can be completed to something that can
   *     be: a row with more factors open is then allowed as well
   * @param free whether every row is allowed, and {@code allowed} need not be asked
   */
  record Problem(int[] levels, PairTest wanted, Predicate<int[]> allowed, boolean free) {}

  /** Tells pairs of levels of two factors, the factor with the lower number first. */
  @FunctionalInterface
  interface PairTest {
    boolean test(int one, int level, int other, int there);
  }

  private PairRows(Problem problem) {
    this.levels = new Levels(problem.levels());
    this.refusals = new Refusals(levels, problem);
    this.wanted = new Cover(levels, problem.wanted());
  }

  /**
   * Rows in which each wanted pair that can be stands at least once.
   *
   * @return for each row the level of every factor, or -1 where nothing needs one
   */
  static List<int[]> of(Problem problem) {
    PairRows pairs = new PairRows(problem);
    return pairs.exact(problem).orElseGet(pairs::search);
  }

  private Optional<List<int[]>> exact(Problem problem) {
    boolean binary = Arrays.stream(problem.levels()).allMatch(count -> count == 2);
    int factors = levels.factors();
    boolean all = wanted.missing() == 2 * factors * (factors - 1);
    return problem.free() && binary && all && factors > 1
        ? Optional.of(BinaryRows.of(factors))
        : Optional.empty();
  }

  private List<int[]> search() {
    if (!refusals.accepts(levels.openRow())) {
      return List.of();
    }
    SplittableRandom random = new SplittableRandom(SEED);
    List<int[]> rows = new GreedyRows(levels, refusals, random).rows(new Cover(wanted));
    List<int[]> few = new FewerRows(levels, refusals, wanted, random).from(rows);
    new Cover(wanted).strip(few);
    return few.stream().map(levels::local).toList();
  }
}
