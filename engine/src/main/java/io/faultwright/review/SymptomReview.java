package io.faultwright.review;

import java.util.List;

/**
 * What a reviewer is shown of a symptom.
 *
 * @param symptom its id
 * @param rules its rules, by id
 * @param overlaps pairs of rules that answer in one situation, contradictions first
 * @param overlapsWhole whether all such pairs are listed
 * @param change when the meaning of the symptom last changed
 */
public record SymptomReview(
    String symptom,
    List<RuleReview> rules,
    List<Overlap> overlaps,
    boolean overlapsWhole,
    LastChange change) {
  public SymptomReview {
    rules = List.copyOf(rules);
    overlaps = List.copyOf(overlaps);
  }
}
