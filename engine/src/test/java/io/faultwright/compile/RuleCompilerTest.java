package io.faultwright.compile;

import static io.faultwright.model.Conditions.above;
import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.not;
import static io.faultwright.model.SituationBuilder.situation;
import static io.faultwright.model.SymptomBuilder.symptom;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.compile.Statement.Kind;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.SituationBuilder;
import io.faultwright.model.Truth;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.kie.api.definition.KiePackage;
import org.kie.api.definition.rule.Rule;

class RuleCompilerTest {
  private static final Condition ICE = is("ice", "yes");
  private static final Condition FAN = is("fan", "yes");

  private final KnowledgeBase base = base();
  private final Program program = RuleCompiler.compile(base);
  private final SymptomProgram symptom = program.of("s").orElseThrow();

  @Test
  void everyStatementIsARuleOfDrools() {
    List<String> names =
        symptom.rules().getKiePackages().stream()
            .map(KiePackage::getRules)
            .flatMap(Collection::stream)
            .map(Rule::getName)
            .sorted()
            .toList();
    assertEquals(
        List.of(
            "s first 0",
            "s first 1",
            "s never n",
            "s never_anywhere n",
            "s recognise ",
            "s rule always",
            "s rule n",
            "s rule twice"),
        names);
    assertEquals(names.size(), symptom.statements().size());
  }

  @Test
  void statementsStandByKindInTheWrittenOrder() {
    assertEquals(
        List.of(
            Kind.RECOGNISE,
            Kind.NEVER_ANYWHERE,
            Kind.NEVER,
            Kind.FIRST,
            Kind.FIRST,
            Kind.RULE,
            Kind.RULE,
            Kind.RULE),
        symptom.statements().stream().map(Statement::kind).toList());
  }

  @Test
  void aSymptomIsCompiledOnce() {
    assertSame(symptom, program.of("s").orElseThrow());
    assertEquals(Optional.empty(), program.of("other"));
  }

  @Test
  void testsThatMeanTheSameAreAskedOnce() {
    assertEquals(3, symptom.tests().size());
  }

  @Test
  void aConditionThatRepeatsItselfIsDecided() {
    Facts facts = facts(situation().word("ice", "yes"));
    Condition twice = base.symptoms().get("s").rules().get("twice").when();
    assertEquals(Truth.TRUE, facts.met(twice, Truth.TRUE));
  }

  @Test
  void factsAreThereWhereSomeBuildFits() {
    assertTrue(symptom.facts(situation().equipment("family", "fell").build()).isPresent());
    assertTrue(symptom.facts(situation().equipment("family", "tarn").build()).isEmpty());
  }

  @Test
  void beforeDroolsDecidesNothingIsTrue() {
    Facts facts = facts(situation().word("ice", "yes"));
    for (int position = 0; position < symptom.statements().size(); position++) {
      assertEquals(Truth.FALSE, facts.decided(position));
    }
  }

  private Facts facts(SituationBuilder situation) {
    return symptom.facts(situation.build()).orElseThrow();
  }

  private static KnowledgeBase base() {
    return new KnowledgeBaseBuilder()
        .model("FL-1", "fell", Map.of())
        .model("TN-1", "tarn", Map.of())
        .yesNo("ice")
        .yesNo("fan")
        .measured("t", "°C", "0", "100")
        .never("n", all(ICE, FAN))
        .symptom(
            symptom("s")
                .applies(is("family", "fell"))
                .never("n", not(FAN))
                .first(above("t", "5"), "other")
                .first(above("t", "5.0"), "another")
                .concludes("n", FAN, "a")
                .concludes("always", Condition.ALWAYS, "b")
                .concludes("twice", all(ICE, is("ice", "yes")), "c"))
        .build();
  }
}
