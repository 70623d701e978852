package io.faultwright.run;

import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.SituationBuilder.situation;
import static io.faultwright.model.SymptomBuilder.conclude;
import static io.faultwright.model.SymptomBuilder.exclude;
import static io.faultwright.model.SymptomBuilder.symptom;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Answer;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.SituationBuilder;
import io.faultwright.model.SymptomBuilder;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Rules beside each other: instead of, together, exclude. */
class StandingTest {
  private static final Condition A = is("a", "yes");
  private static final Condition B = is("b", "yes");
  private static final Condition C = is("c", "yes");

  @Test
  void aRuleIsSilentWhereOneThatStandsInsteadFires() {
    SymptomBuilder symptom =
        symptom("s").concludes("plain", A, "x").concludes("special", all(A, B), "y", "plain");
    Trace trace = run(symptom, yes("a", "b"));
    assertEquals(Set.of("y"), faults(trace));
    assertEquals(new RuleTrace.Silenced(sorted("special")), trace.rules().get("plain"));
    assertEquals(Set.of("x"), trace.ruledOut());
    assertEquals(Set.of("x"), faults(run(symptom, yes("a").word("b", "no"))));
  }

  /** More readings must never take an answer back. */
  @Test
  void aRuleWaitsForOneThatMayStandInsteadOfIt() {
    SymptomBuilder symptom =
        symptom("s").concludes("plain", A, "x").concludes("special", all(A, B), "y", "plain");
    Trace trace = run(symptom, yes("a"));
    assertEquals(Set.of(), faults(trace));
    assertEquals(Set.of("x", "y"), trace.stillPossible());
    RuleTrace.CouldFire plain = (RuleTrace.CouldFire) trace.rules().get("plain");
    assertEquals(Set.of("special"), plain.waitingFor());
    assertEquals(Set.of("b"), plain.missing());
    assertEquals(Optional.of("b"), trace.next());
  }

  @Test
  void aRuleThatMayFireIsSilencedByOneThatFires() {
    SymptomBuilder symptom =
        symptom("s").concludes("plain", A, "x").concludes("special", B, "y", "plain");
    Trace trace = run(symptom, yes("b"));
    assertEquals(new RuleTrace.Silenced(sorted("special")), trace.rules().get("plain"));
    assertEquals(Set.of("x"), trace.ruledOut());
    assertEquals(Set.of(), trace.stillPossible());
  }

  @Test
  void aRuleThatCannotFireIsNotCalledSilenced() {
    SymptomBuilder symptom =
        symptom("s").concludes("plain", A, "x").concludes("special", B, "y", "plain");
    Trace trace = run(symptom, yes("b").word("a", "no"));
    assertTrue(trace.rules().get("plain") instanceof RuleTrace.CannotFire);
  }

  @Test
  void aSilencedRuleStillSilences() {
    SymptomBuilder symptom =
        symptom("s")
            .concludes("one", A, "x")
            .concludes("two", B, "y", "one")
            .concludes("three", C, "z", "two");
    Trace trace = run(symptom, yes("a", "b", "c"));
    assertEquals(Set.of("z"), faults(trace));
    assertEquals(new RuleTrace.Silenced(sorted("two")), trace.rules().get("one"));
    assertEquals(new RuleTrace.Silenced(sorted("three")), trace.rules().get("two"));
  }

  @Test
  void severalRulesMaySilenceOne() {
    SymptomBuilder symptom =
        symptom("s")
            .concludes("one", A, "x")
            .concludes("two", B, "y", "one")
            .concludes("three", C, "y", "one");
    assertEquals(
        new RuleTrace.Silenced(sorted("three", "two")),
        run(symptom, yes("a", "b", "c")).rules().get("one"));
  }

  @Test
  void twoFaultsContradictUnlessTheyGoTogether() {
    SymptomBuilder symptom = symptom("s").concludes("one", A, "x").concludes("two", B, "y");
    assertTrue(run(symptom, yes("a", "b")).contradictory());
    assertFalse(run(symptom, yes("a").word("b", "no")).contradictory());
    Trace together = run(symptom.together("y", "x"), yes("a", "b"));
    assertFalse(together.contradictory());
    assertEquals(Set.of("x", "y"), faults(together));
  }

  @Test
  void everyPairMustGoTogether() {
    SymptomBuilder symptom =
        symptom("s")
            .concludes("one", A, "x")
            .concludes("two", B, "y")
            .concludes("three", C, "z")
            .together("x", "y")
            .together("y", "z");
    assertTrue(run(symptom, yes("a", "b", "c")).contradictory());
    assertFalse(run(symptom.together("x", "z"), yes("a", "b", "c")).contradictory());
  }

  @Test
  void twoRulesForOneFaultDoNotContradict() {
    SymptomBuilder symptom = symptom("s").concludes("one", A, "x").concludes("two", B, "x");
    assertFalse(run(symptom, yes("a", "b")).contradictory());
  }

  @Test
  void aRuleMayConcludeFaultsThatGoTogether() {
    SymptomBuilder symptom = symptom("s").rule("one", A, conclude("x", "y"));
    assertTrue(run(symptom, yes("a")).contradictory());
    assertFalse(run(symptom.together("x", "y"), yes("a")).contradictory());
  }

  @Test
  void aReferralBesideAFaultContradicts() {
    SymptomBuilder symptom =
        symptom("s").concludes("one", A, "x").rule("two", B, new Conclusion.Refer("other"));
    assertTrue(run(symptom, yes("a", "b")).contradictory());
  }

  @Test
  void aFaultConcludedAndExcludedContradicts() {
    SymptomBuilder symptom = symptom("s").concludes("one", A, "x").rule("two", B, exclude("x"));
    Trace trace = run(symptom, yes("a", "b"));
    assertTrue(trace.contradictory());
    assertEquals(Set.of("x"), faults(trace));
    assertEquals(Set.of("x"), trace.ruledOut());
    assertFalse(run(symptom, yes("a")).contradictory());
  }

  @Test
  void anExclusionAloneIsNoAnswer() {
    SymptomBuilder symptom =
        symptom("s").concludes("one", A, "x").rule("two", B, exclude("x", "elsewhere"));
    Trace open = run(symptom, yes("b"));
    assertEquals(Status.NOTHING_YET, open.status());
    assertEquals(Set.of("elsewhere", "x"), open.ruledOut());
    assertEquals(Set.of(), open.stillPossible());
    assertEquals(Status.NO_ANSWER, run(symptom, yes("b").word("a", "no")).status());
  }

  @Test
  void aSilencedExclusionExcludesNothing() {
    SymptomBuilder symptom =
        symptom("s").concludes("one", A, "x", "two").rule("two", A, exclude("x"));
    Trace trace = run(symptom, yes("a"));
    assertFalse(trace.contradictory());
    assertEquals(Set.of(), trace.ruledOut());
  }

  @Test
  void faultsAreConcludedPossibleOrRuledOut() {
    SymptomBuilder symptom =
        symptom("s")
            .concludes("one", A, "x")
            .concludes("two", B, "y")
            .concludes("three", C, "z")
            .concludes("four", all(A, C), "x");
    Trace trace = run(symptom, yes("a").word("b", "no"));
    assertEquals(Set.of("x"), faults(trace));
    assertEquals(Set.of("z"), trace.stillPossible());
    assertEquals(Set.of("y"), trace.ruledOut());
  }

  private static Set<String> faults(Trace trace) {
    return trace.answers().stream().map(Answer::name).collect(Collectors.toSet());
  }

  private static SortedSet<String> sorted(String... ids) {
    return new TreeSet<>(List.of(ids));
  }

  private static SituationBuilder yes(String... readings) {
    SituationBuilder situation = situation();
    List.of(readings).forEach(reading -> situation.word(reading, "yes"));
    return situation;
  }

  private static Trace run(SymptomBuilder symptom, SituationBuilder situation) {
    KnowledgeBase base =
        new KnowledgeBaseBuilder()
            .model("FL-1", "fell", Map.of())
            .yesNo("a")
            .yesNo("b")
            .yesNo("c")
            .symptom(symptom)
            .build();
    return new Runner(base, RuleCompiler.compile(base)).run("s", situation.build());
  }
}
