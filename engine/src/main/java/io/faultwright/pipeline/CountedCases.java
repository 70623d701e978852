package io.faultwright.pipeline;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.run.CaseResult;
import io.faultwright.run.Runner;
import java.util.List;

/**
 * The cases of a knowledge base, by what they are good for.
 *
 * @param passing those that a person confirmed and that come out so
 * @param unconfirmed those that nobody has confirmed
 * @param failed how many come out otherwise than they expect
 */
record CountedCases(List<Case> passing, List<Case> unconfirmed, int failed) {
  static CountedCases of(KnowledgeBase kb) {
    Runner runner = new Runner(kb, RuleCompiler.compile(kb));
    List<Case> confirmed = kb.cases().values().stream().filter(Case::confirmed).toList();
    List<Case> passing =
        confirmed.stream()
            .filter(one -> new CaseResult(one, runner.run(one.symptom(), one.given())).passed())
            .toList();
    return new CountedCases(
        passing,
        kb.cases().values().stream().filter(one -> !one.confirmed()).toList(),
        confirmed.size() - passing.size());
  }
}
