package io.faultwright.run;

import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.SituationBuilder.situation;
import static io.faultwright.model.SymptomBuilder.symptom;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Answer;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.SituationBuilder;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CaseResultTest {
  private static final Answer A = new Answer.OfFault("a");
  private static final Answer B = new Answer.OfFault("b");

  @Test
  void theExpectedAnswersPass() {
    assertTrue(result(running().word("ice", "untouched"), A).passed());
  }

  @Test
  void otherAnswersFailAndBothAreThere() {
    CaseResult result = result(running().word("ice", "untouched"), B);
    assertFalse(result.passed());
    assertEquals(Set.of(A), result.trace().answers());
    assertEquals(Set.of(B), result.recorded().expect());
  }

  @Test
  void fewerOrMoreAnswersThanExpectedFail() {
    assertFalse(result(running().word("ice", "untouched"), A, B).passed());
    assertFalse(result(running().word("ice", "untouched")).passed());
  }

  @Test
  void nothingYetPassesWhereNothingIsAnswered() {
    assertTrue(result(running()).passed());
    assertFalse(result(running(), A).passed());
  }

  @Test
  void aReferralPasses() {
    assertTrue(
        result(situation().word("fan", "no"), new Answer.OfReferral("fan-stopped")).passed());
  }

  @Test
  void aCaseThatCannotBeRunFailsThoughNothingIsExpected() {
    assertFalse(result(situation().word("ice", "blue")).passed());
    assertFalse(result(situation().equipment("model", "FL-9")).passed());
  }

  @Test
  void casesRunInTheOrderOfTheirIds() {
    KnowledgeBase base =
        world()
            .recorded("b", "s", running().build())
            .recorded("a", "s", running().word("ice", "untouched").build(), A)
            .build();
    List<CaseResult> results = new Runner(base, RuleCompiler.compile(base)).runCases();
    assertEquals(List.of("a", "b"), results.stream().map(r -> r.recorded().id()).toList());
    assertTrue(results.stream().allMatch(CaseResult::passed));
  }

  private static CaseResult result(SituationBuilder given, Answer... expect) {
    KnowledgeBase base = world().recorded("c", "s", given.build(), expect).build();
    return new Runner(base, RuleCompiler.compile(base)).runCases().get(0);
  }

  private static SituationBuilder running() {
    return situation().word("fan", "yes");
  }

  private static KnowledgeBaseBuilder world() {
    return new KnowledgeBaseBuilder()
        .model("FL-1", "fell", Map.of())
        .choice("ice", "untouched", "loose", "none")
        .choice("fan", "yes", "no")
        .symptom(
            symptom("s")
                .first(is("fan", "yes"), "fan-stopped")
                .concludes("r", is("ice", "untouched"), "a"));
  }
}
