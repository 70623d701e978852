package io.faultwright.analysis.suggestion;

import io.faultwright.analysis.coverage.Factor;
import io.faultwright.analysis.coverage.Pairs;
import io.faultwright.analysis.space.Diagrams;
import java.util.BitSet;

/** The open pairs of a symptom as a problem of few rows. */
final class PairProblem {
  private final Pairs pairs;
  private final BitSet open;

  /**
   * @param open numbers of the pairs to be covered
   */
  PairProblem(Pairs pairs, BitSet open) {
    this.pairs = pairs;
    this.open = open;
  }

  PairRows.Problem problem() {
    return new PairRows.Problem(
        pairs.factors().stream().mapToInt(Factor::levels).toArray(),
        (one, level, other, there) -> open.get(pairs.number(one, level, other, there)),
        row -> pairs.where(row) != Diagrams.NONE,
        pairs.workable() == Diagrams.ALL);
  }
}
