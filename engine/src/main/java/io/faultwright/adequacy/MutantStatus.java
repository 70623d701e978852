package io.faultwright.adequacy;

import java.util.Optional;

/**
 * A mutant, and whether the cases notice it.
 *
 * @param mutant the mistake
 * @param fate what became of it
 * @param by id of a case that notices it; absent unless one does
 * @param shownBy a situation that would; absent unless no case does and there is one
 */
public record MutantStatus(
    Mutant mutant, Fate fate, Optional<String> by, Optional<Difference> shownBy) {
  /** What became of a mutant. */
  public enum Fate {
    /** A case comes out otherwise than it expects. */
    KILLED,
    /** No case notices it, though some situation has another outcome. */
    SURVIVED,
    /** Proved: no situation has another outcome. */
    EQUIVALENT,
    /** No case notices it; the time was over before more was known. */
    UNDECIDED
  }

  public static MutantStatus killed(Mutant mutant, String by) {
    return new MutantStatus(mutant, Fate.KILLED, Optional.of(by), Optional.empty());
  }

  public static MutantStatus survived(Mutant mutant, Difference shownBy) {
    return new MutantStatus(mutant, Fate.SURVIVED, Optional.empty(), Optional.of(shownBy));
  }

  public static MutantStatus equivalent(Mutant mutant) {
    return new MutantStatus(mutant, Fate.EQUIVALENT, Optional.empty(), Optional.empty());
  }

  public static MutantStatus undecided(Mutant mutant) {
    return new MutantStatus(mutant, Fate.UNDECIDED, Optional.empty(), Optional.empty());
  }
}
