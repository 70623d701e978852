package io.faultwright.run;

import static io.faultwright.model.Conditions.above;
import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.SituationBuilder.situation;
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
import io.faultwright.model.Value;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** How far a situation gets, in the order in which it is looked at. */
class RunnerTest {
  private static final Condition ICE = is("ice", "untouched");
  private static final Condition FAN = is("fan", "yes");

  @Test
  void anUnknownSymptomIsSaidSo() {
    assertStops(Status.UNKNOWN_SYMPTOM, run(symptom("other"), situation()));
  }

  @Test
  void equipmentThatIsNotPublishedIsSaidSo() {
    SituationBuilder electricFell =
        situation().equipment("family", "fell").equipment("defrost", "electric");
    assertStops(Status.NO_SUCH_EQUIPMENT, run(symptom("s"), electricFell));
  }

  @Test
  void aFactThatNoEquipmentHasIsNamed() {
    Trace trace = run(symptom("s"), situation().equipment("colour", "red"));
    assertEquals(Status.NO_SUCH_EQUIPMENT, trace.status());
    assertEquals(List.of(new Note.NoSuchFact("colour")), trace.notes());
  }

  @Test
  void aSymptomIsOnlyOfferedWhereItApplies() {
    SymptomBuilder symptom =
        symptom("s").applies(is("defrost", "hot-gas")).concludes("r", Condition.ALWAYS, "a");
    assertStops(Status.DOES_NOT_APPLY, run(symptom, situation().equipment("family", "tarn")));
    assertEquals(Status.ANSWERED, run(symptom, situation().equipment("family", "fell")).status());
  }

  @Test
  void aValueOutsideItsRangeIsAQuestionBack() {
    Trace trace =
        run(symptom("s").concludes("r", Condition.ALWAYS, "a"), situation().amount("t", "101"));
    assertEquals(Status.CHECK_VALUES, trace.status());
    assertEquals(Set.of(), trace.answers());
    assertEquals(
        List.of(new Note.NotPossible("t", new Value.Number(BigFraction.of(101)))), trace.notes());
  }

  @Test
  void bothEndsOfARangeArePossible() {
    SymptomBuilder symptom = symptom("s").concludes("r", above("t", "99"), "a");
    assertEquals(Status.NO_ANSWER, run(symptom, situation().amount("t", "0")).status());
    assertEquals(Status.ANSWERED, run(symptom, situation().amount("t", "100")).status());
  }

  @Test
  void everyStrangeReadingIsNamed() {
    SituationBuilder strange =
        situation().word("ice", "blue").word("t", "warm").amount("fan", "1").word("smell", "yes");
    assertEquals(
        List.of("fan", "ice", "smell", "t"),
        run(symptom("s"), strange).notes().stream().map(RunnerTest::reading).toList());
  }

  private static String reading(Note note) {
    return note instanceof Note.NotPossible not
        ? not.reading()
        : ((Note.NoSuchReading) note).reading();
  }

  @Test
  void whatCannotHappenIsToBeTakenAgain() {
    SymptomBuilder symptom =
        symptom("s").never("cold-fire", all(ICE, FAN)).concludes("r", Condition.ALWAYS, "a");
    Trace trace = run(symptom, iceAndFan());
    assertStops(Status.TAKE_AGAIN, trace);
    Note.NeverViolated note = (Note.NeverViolated) trace.notes().get(0);
    assertEquals("cold-fire", note.never());
    assertFalse(note.anywhere());
    assertEquals(List.of("ice", "fan"), subjects(note.tests()));
  }

  @Test
  void whatMightNotHappenIsNoHindrance() {
    SymptomBuilder symptom =
        symptom("s").never("cold-fire", all(ICE, FAN)).concludes("r", Condition.ALWAYS, "a");
    assertEquals(Status.ANSWERED, run(symptom, situation().word("ice", "untouched")).status());
  }

  @Test
  void whatCannotHappenAnywhereCannotHappenHere() {
    KnowledgeBase base =
        world()
            .never("cold-fire", ICE)
            .symptom(symptom("s").never("cold-fire", FAN).concludes("r", ICE, "a"))
            .build();
    Trace trace = run(base, iceAndFan());
    assertEquals(Status.TAKE_AGAIN, trace.status());
    assertEquals(
        List.of(true, false),
        trace.notes().stream().map(note -> ((Note.NeverViolated) note).anywhere()).toList());
  }

  @Test
  void aComplaintThatIsSurelyAnotherIsTurnedAway() {
    SymptomBuilder symptom = symptom("s").recognise(ICE).concludes("r", FAN, "a");
    Trace trace = run(symptom, situation().word("ice", "none").word("fan", "yes"));
    assertStops(Status.NOT_THIS_SYMPTOM, trace);
    assertEquals(List.of("ice"), subjects(((Note.NotRecognised) trace.notes().get(0)).failed()));
    assertEquals(Status.ANSWERED, run(symptom, situation().word("fan", "yes")).status());
  }

  @Test
  void whatFailsFirstIsAReferral() {
    SymptomBuilder symptom = symptom("s").first(FAN, "fan-stopped").concludes("r", ICE, "a");
    Trace trace = run(symptom, situation().word("ice", "untouched").word("fan", "no"));
    assertEquals(Status.REFERRED, trace.status());
    assertEquals(Set.of(new Answer.OfReferral("fan-stopped")), trace.answers());
    assertEquals(Map.of(), trace.rules());
    assertEquals("fan-stopped", ((Note.First) trace.notes().get(0)).otherwise());
  }

  @Test
  void whatIsNotKnownFirstIsAskedAndNothingConcluded() {
    SymptomBuilder symptom = symptom("s").first(FAN, "fan-stopped").concludes("r", ICE, "a");
    Trace trace = run(symptom, situation().word("ice", "untouched"));
    assertStops(Status.ASK_FIRST, trace);
    assertEquals("fan", trace.next().orElseThrow());
  }

  @Test
  void whatIsFirstIsLookedAtInTheWrittenOrder() {
    SymptomBuilder symptom =
        symptom("s")
            .first(FAN, "fan-stopped")
            .first(ICE, "no-ice")
            .concludes("r", Condition.ALWAYS, "a");
    SituationBuilder noIce = situation().word("ice", "none");
    assertEquals(Status.ASK_FIRST, run(symptom, noIce).status());
    assertEquals(
        Set.of(new Answer.OfReferral("fan-stopped")),
        run(symptom, noIce.word("fan", "no")).answers());
    assertEquals(
        Set.of(new Answer.OfReferral("no-ice")), run(symptom, noIce.word("fan", "yes")).answers());
    assertEquals(Status.ANSWERED, run(symptom, iceAndFan()).status());
  }

  @Test
  void moreThanTenThingsMayHaveToBeRightFirst() {
    SymptomBuilder symptom = symptom("s").concludes("r", Condition.ALWAYS, "a");
    for (int i = 0; i < 12; i++) {
      symptom.first(above("t", "" + i), "too-cold-" + i);
    }
    assertEquals(
        Set.of(new Answer.OfReferral("too-cold-2")),
        run(symptom, situation().amount("t", "2")).answers());
    assertEquals(
        Set.of(new Answer.OfReferral("too-cold-11")),
        run(symptom, situation().amount("t", "11")).answers());
  }

  @Test
  void anImpossibleSituationIsNotReferred() {
    SymptomBuilder symptom = symptom("s").never("n", ICE).recognise(FAN).first(FAN, "fan-stopped");
    assertEquals(
        Status.TAKE_AGAIN,
        run(symptom, situation().word("ice", "untouched").word("fan", "no")).status());
  }

  @Test
  void anEscalationIsAnAnswerAndAReferralToo() {
    SymptomBuilder symptom =
        symptom("s")
            .rule("ask", all(ICE, FAN), new Conclusion.Escalate("hotline"))
            .rule("go", all(is("ice", "none"), FAN), new Conclusion.Refer("room-too-warm"));
    assertEquals(Set.of(new Answer.OfEscalation("hotline")), run(symptom, iceAndFan()).answers());
    assertEquals(
        Set.of(new Answer.OfReferral("room-too-warm")),
        run(symptom, situation().word("ice", "none").word("fan", "yes")).answers());
  }

  @Test
  void aSymptomWithoutRulesHasNoAnswer() {
    assertStops(Status.NO_ANSWER, run(symptom("s"), situation()));
  }

  @Test
  void symptomsMayUseTheSameRuleIds() {
    KnowledgeBase base =
        world()
            .symptom(symptom("s").concludes("r", ICE, "a"))
            .symptom(symptom("z").concludes("r", is("ice", "none"), "b"))
            .build();
    Runner runner = new Runner(base, RuleCompiler.compile(base));
    assertEquals(Set.of(new Answer.OfFault("a")), runner.run("s", iceAndFan().build()).answers());
    assertEquals(Status.NO_ANSWER, runner.run("z", iceAndFan().build()).status());
  }

  /** Fresh runners, many times: what several threads may spoil is built at the first use. */
  @Test
  void oneRunnerServesSeveralThreads() {
    KnowledgeBase base =
        world().symptom(symptom("s").concludes("r", above("t", "50"), "a")).build();
    for (int round = 0; round < 60; round++) {
      Runner runner = new Runner(base, RuleCompiler.compile(base));
      Map<Integer, Status> found =
          IntStream.range(0, 101)
              .parallel()
              .boxed()
              .collect(
                  Collectors.toConcurrentMap(
                      t -> t,
                      t -> runner.run("s", situation().amount("t", "" + t).build()).status()));
      found.forEach(
          (t, status) -> assertEquals(t > 50 ? Status.ANSWERED : Status.NO_ANSWER, status, "" + t));
    }
  }

  @Test
  void nothingOfOneRunStaysForTheNext() {
    KnowledgeBase base = world().symptom(symptom("s").concludes("r", ICE, "a")).build();
    Runner runner = new Runner(base, RuleCompiler.compile(base));
    assertEquals(Status.ANSWERED, runner.verdict("s", iceAndFan().build()).status());
    assertEquals(Status.NOTHING_YET, runner.verdict("s", situation().build()).status());
    assertEquals(
        Status.NO_ANSWER, runner.verdict("s", situation().word("ice", "none").build()).status());
  }

  private static SituationBuilder iceAndFan() {
    return situation().word("ice", "untouched").word("fan", "yes");
  }

  private static void assertStops(Status status, Trace trace) {
    assertEquals(status, trace.status());
    assertTrue(trace.answers().isEmpty());
    assertTrue(trace.rules().isEmpty());
    assertTrue(trace.stillPossible().isEmpty() && trace.ruledOut().isEmpty());
  }

  private static List<String> subjects(List<TestTrace> tests) {
    return tests.stream().map(trace -> trace.test().subject()).toList();
  }

  private static Trace run(SymptomBuilder symptom, SituationBuilder situation) {
    return run(world().symptom(symptom).build(), situation);
  }

  private static Trace run(KnowledgeBase base, SituationBuilder situation) {
    return new Runner(base, RuleCompiler.compile(base)).run("s", situation.build());
  }

  private static KnowledgeBaseBuilder world() {
    return new KnowledgeBaseBuilder()
        .option("defrost", "hot-gas", "electric")
        .model("FL-1", "fell", Map.of("defrost", "hot-gas"), "1.4", "2.10")
        .model("TN-1", "tarn", Map.of("defrost", "electric"))
        .choice("ice", "untouched", "loose", "none")
        .yesNo("fan")
        .measured("t", "°C", "0", "100");
  }
}
