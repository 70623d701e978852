package io.faultwright.review;

import io.faultwright.model.Sorted;
import java.util.SortedSet;

/**
 * What a reviewer is shown of a rule besides the rule itself.
 *
 * @param rule its id
 * @param cases ids of the recorded cases that fire it
 * @param region the possible situations in which it answers
 * @param change when its meaning last changed
 */
public record RuleReview(String rule, SortedSet<String> cases, Region region, LastChange change) {
  public RuleReview {
    cases = Sorted.set(cases);
  }
}
