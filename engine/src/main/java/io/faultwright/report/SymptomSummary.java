package io.faultwright.report;

import io.faultwright.finding.Share;
import java.util.Optional;

/**
 * What was proved about one symptom.
 *
 * @param id id of the symptom
 * @param rules how many rules it has
 * @param gapFree whether every possible situation is answered; absent where not computed
 * @param contradictionFree whether no situation gets two answers; absent where not computed
 * @param proof what kind of proof stands behind both
 * @param unanswered share of situations without an answer; absent where not computed
 * @param contradicted share of situations with contradictory answers; absent where not computed
 * @param escalated share of situations that only an escalation answers; absent where not computed
 */
public record SymptomSummary(
    String id,
    int rules,
    Optional<Boolean> gapFree,
    Optional<Boolean> contradictionFree,
    Proof proof,
    Optional<Share> unanswered,
    Optional<Share> contradicted,
    Optional<Share> escalated) {
  /** How far an analysis went. */
  public enum Proof {
    /** Every situation was looked at, by exact reasoning. */
    EXACT("exact"),
    /** Time ran out; what is said holds, but more may be found. */
    PARTIAL("partial"),
    /** Nothing is said. */
    NOT_COMPUTED("not computed");

    private final String word;

    Proof(String word) {
      this.word = word;
    }

    /** The word in every output. */
    public String word() {
      return word;
    }
  }

  /** Whether the symptom is proved to have neither a gap nor a contradiction. */
  public boolean clean() {
    return gapFree.orElse(false) && contradictionFree.orElse(false);
  }
}
