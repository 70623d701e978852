package io.faultwright.adequacy;

import io.faultwright.adequacy.MutantStatus.Fate;
import java.util.Collection;

/**
 * How many mistakes the cases notice.
 *
 * @param killed by a case
 * @param survived though some situation has another outcome
 * @param equivalent proved to change nothing, and left out
 * @param undecided for want of time; they count as survivors
 */
public record MutationScore(int killed, int survived, int equivalent, int undecided) {
  public static MutationScore of(Collection<MutantStatus> mutants) {
    return new MutationScore(
        count(mutants, Fate.KILLED),
        count(mutants, Fate.SURVIVED),
        count(mutants, Fate.EQUIVALENT),
        count(mutants, Fate.UNDECIDED));
  }

  private static int count(Collection<MutantStatus> mutants, Fate fate) {
    return (int) mutants.stream().filter(mutant -> mutant.fate() == fate).count();
  }

  /** Those killed of those that change something. */
  public Tally tally() {
    return new Tally(killed, killed + survived + undecided);
  }
}
