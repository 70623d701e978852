package io.faultwright.analysis.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.contradiction.ContradictionAnalysis;
import io.faultwright.analysis.gap.GapAnalysis;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.Finding;
import io.faultwright.finding.RegionTest;
import io.faultwright.model.Conclusion;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.quantity.Decimals;
import io.faultwright.run.Runner;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * An interval table in the style of Calvanese et al., "Semantics, Analysis and Simplification of
 * DMN Decision Tables", Information Systems 78:112-125, 2018; rows from memory, the consequences
 * worked out by hand: rows A and C meet in [500..1000] x [500..1000] and no other rows meet, and
 * income 1600 with size 10 is answered by none.
 */
class CreditGradesTest {
  private final KnowledgeBase knowledge = Published.read("credit-grades");
  private final SymptomSpace space = Published.space(knowledge);

  @Test
  void rowsAAndCAreTheOnlyOverlap() {
    List<Finding> found = ContradictionAnalysis.findings(space);
    assertEquals(1, found.size());
    assertEquals(List.of("rule-a", "rule-c"), found.get(0).rules());
    assertEquals(
        List.of(
            new RegionTest("income", "500 to 1000 times"),
            new RegionTest("size", "500 to 1000 times")),
        found.get(0).region());
  }

  @Test
  void theTableIsIncompleteAndThePublishedExampleIsAmongTheGaps() {
    assertFalse(GapAnalysis.findings(space).isEmpty());
    TreeMap<String, Value> readings = new TreeMap<>();
    readings.put("income", new Value.Number(Decimals.parse("1600")));
    readings.put("size", new Value.Number(Decimals.parse("10")));
    Runner runner = new Runner(knowledge, RuleCompiler.compile(knowledge));
    assertTrue(runner.run("grade", new Situation(new TreeMap<>(), readings)).answers().isEmpty());
  }

  @Test
  void noRuleAnswersAnyWitnessOfAGap() {
    Runner runner = new Runner(knowledge, RuleCompiler.compile(knowledge));
    for (Finding gap : GapAnalysis.findings(space)) {
      Situation witness = gap.witness().orElseThrow();
      assertTrue(runner.run("grade", witness).answers().isEmpty(), () -> gap.toString());
    }
    assertTrue(
        knowledge.symptoms().get("grade").rules().values().stream()
            .allMatch(rule -> rule.conclusion() instanceof Conclusion.Conclude));
  }
}
