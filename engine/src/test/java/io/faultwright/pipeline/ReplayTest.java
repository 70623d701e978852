package io.faultwright.pipeline;

import static io.faultwright.model.Conditions.NOWHERE;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.SituationBuilder.situation;
import static io.faultwright.model.SymptomBuilder.symptom;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.Situation;
import io.faultwright.model.SituationBuilder;
import io.faultwright.run.Runner;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class ReplayTest {
  private static final KnowledgeBase BASE =
      new KnowledgeBaseBuilder()
          .model("FL-1", "fell", Map.of())
          .choice("ice", "untouched", "loose", "none")
          .choice("light", "red", "green")
          .symptom(
              symptom("left")
                  .recognise(is("ice", "untouched", "loose"))
                  .concludes("valve", is("ice", "untouched"), "valve-stuck")
                  .concludes("red", is("light", "red"), "board"))
          .symptom(
              symptom("lit")
                  .recognise(is("light", "red"))
                  .first(is("ice", "none"), "left")
                  .concludes("board", is("light", "red"), "board"))
          .build();

  private final Replay replay = new Replay(BASE, new Runner(BASE, RuleCompiler.compile(BASE)));

  static Stream<Arguments> agreed() {
    return Stream.of(
        Arguments.of(FindingKind.GAP, "left", List.of(), given("loose", "green")),
        Arguments.of(
            FindingKind.CONTRADICTION, "left", List.of("valve", "red"), given("untouched", "red")),
        Arguments.of(FindingKind.DUPLICATE_RULE, "left", List.of("red"), given("loose", "red")),
        Arguments.of(FindingKind.CIRCULAR_REFERRAL, "lit", List.of(), given("loose", "red")),
        Arguments.of(FindingKind.AMBIGUOUS_SYMPTOMS, "left", List.of(), given("loose", "red")),
        Arguments.of(
            FindingKind.UNRECOGNISED_COMPLAINT, "left", List.of(), given("none", "green")));
  }

  @ParameterizedTest
  @MethodSource("agreed")
  void findingThatDroolsSeesTooIsConfirmed(
      FindingKind kind, String symptom, List<String> rules, Situation witness) {
    List<Finding> confirmed = replay.confirm(List.of(finding(kind, symptom, rules, witness)));
    assertTrue(confirmed.get(0).replayed());
  }

  static Stream<Arguments> disputed() {
    return Stream.of(
        Arguments.of(FindingKind.GAP, "left", List.of(), given("untouched", "green")),
        Arguments.of(FindingKind.GAP, "left", List.of(), situation().word("ice", "loose").build()),
        Arguments.of(FindingKind.GAP, "left", List.of(), given("none", "green")),
        Arguments.of(
            FindingKind.CONTRADICTION, "left", List.of("valve", "red"), given("loose", "red")),
        Arguments.of(FindingKind.DUPLICATE_RULE, "left", List.of("valve"), given("loose", "red")),
        Arguments.of(FindingKind.CIRCULAR_REFERRAL, "lit", List.of(), given("none", "red")),
        Arguments.of(FindingKind.LIMITS_MISSING, "left", List.of(), given("loose", "green")),
        Arguments.of(FindingKind.AMBIGUOUS_SYMPTOMS, "left", List.of(), given("loose", "green")),
        Arguments.of(FindingKind.UNRECOGNISED_COMPLAINT, "left", List.of(), given("none", "red")));
  }

  @ParameterizedTest
  @MethodSource("disputed")
  void findingThatDroolsDoesNotSeeIsAnInternalDisagreement(
      FindingKind kind, String symptom, List<String> rules, Situation witness) {
    Finding wrong = finding(kind, symptom, rules, witness);
    InternalDisagreement loud =
        assertThrows(InternalDisagreement.class, () -> replay.confirm(List.of(wrong)));
    assertTrue(loud.getMessage().startsWith(kind.slug()), loud.getMessage());
  }

  @Test
  void findingWithoutWitnessStaysUnconfirmed() {
    Finding plain = Finding.of(FindingKind.UNUSED_READING, NOWHERE, "message", "help");
    assertEquals(List.of(plain), replay.confirm(List.of(plain)));
    assertFalse(plain.replayed());
  }

  private static Finding finding(
      FindingKind kind, String symptom, List<String> rules, Situation witness) {
    return Finding.of(kind, NOWHERE, "message", "help")
        .in(symptom, rules)
        .shownBy(witness, List.of(), Optional.empty());
  }

  private static Situation given(String ice, String light) {
    SituationBuilder known = situation().equipment("model", "FL-1").word("ice", ice);
    return known.word("light", light).build();
  }
}
