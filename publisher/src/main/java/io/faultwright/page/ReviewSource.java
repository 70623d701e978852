package io.faultwright.page;

import io.faultwright.finding.Finding;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Signed;
import io.faultwright.plain.Hint;
import io.faultwright.release.SignOffState;
import io.faultwright.review.SymptomReview;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What the report for reviewers is written from.
 *
 * @param kb the knowledge base
 * @param findings of its check, those about sign-offs included
 * @param proofs what was proved of each symptom, in words, by its id
 * @param symptoms cases, regions, overlaps and last changes
 * @param signOffs of everything that can be signed
 * @param plain how the texts were looked at
 */
public record ReviewSource(
    KnowledgeBase kb,
    List<Finding> findings,
    SortedMap<String, String> proofs,
    List<SymptomReview> symptoms,
    List<SignOffState> signOffs,
    Plain plain) {
  /**
   * Texts against the rules of plain language.
   *
   * @param applies whether the texts are in English, for which the rules are made
   * @param steps how many steps were looked at
   * @param most words of a sentence
   * @param hints what speaks against them
   */
  public record Plain(boolean applies, int steps, int most, List<Hint> hints) {}

  Map<Signed, SignOffState> bySigned() {
    return signOffs.stream().collect(Collectors.toMap(SignOffState::of, Function.identity()));
  }
}
