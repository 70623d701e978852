package io.faultwright.adequacy;

import io.faultwright.source.Place;
import java.util.Locale;
import java.util.Optional;

/**
 * A small mistake put into the knowledge base, which a good set of cases notices.
 *
 * @param operator what kind of mistake
 * @param symptom id of the symptom it is in; absent where it is in limits
 * @param rule id of the rule it is in; absent where it is in none
 * @param words what was changed into what
 * @param place where that stands
 */
public record Mutant(
    Operator operator, Optional<String> symptom, Optional<String> rule, String words, Place place) {
  /**
   * Kinds of mistake, after Offutt et al., "An Experimental Determination of Sufficient Mutant
   * Operators", ACM TOSEM 5(2), 1996, and Lau and Yu, "An extended fault class hierarchy for
   * specification-based testing", ACM TOSEM 14(3), 2005.
   */
  public enum Operator {
    /** A threshold lies one step off. */
    THRESHOLD_MOVED,
    /** A threshold belongs to the other side. */
    THRESHOLD_ENDED,
    /** Above for below, or the other way round. */
    COMPARISON_TURNED,
    /** A condition is left out. */
    CONDITION_DROPPED,
    /** A condition says the contrary. */
    CONDITION_NEGATED,
    /** A condition names another value. */
    VALUE_SWAPPED,
    /** Every for any, or the other way round. */
    JOINED_OTHERWISE,
    /** A software version more or less. */
    SOFTWARE_MOVED,
    /** A rule, or something that must be right first, is left out. */
    RULE_DELETED,
    /** A rule concludes something else. */
    CONCLUSION_SWAPPED,
    /** A limit lies one step off. */
    LIMIT_MOVED;

    /** The word in outputs, for instance {@code threshold-moved}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
