package io.faultwright.run;

import static io.faultwright.model.Conditions.above;
import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.any;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.limits;
import static io.faultwright.model.Conditions.not;
import static io.faultwright.model.Conditions.notTaken;
import static io.faultwright.model.LimitsTableBuilder.interpolated;
import static io.faultwright.model.SituationBuilder.situation;
import static io.faultwright.model.SymptomBuilder.symptom;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Access;
import io.faultwright.model.Band;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.NamedValue;
import io.faultwright.model.SituationBuilder;
import io.faultwright.model.Value;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Which tests a trace names for a rule, and what it says is missing. */
class ReasonsTest {
  private static final Condition ICE = is("ice", "yes");
  private static final Condition FAN = is("fan", "yes");
  private static final Condition HIGH = limits("pressure", Side.ABOVE);

  @Test
  void aRuleThatFiresNamesTheTestsThatHold() {
    RuleTrace rule =
        trace(
            all(ICE, any(FAN, above("coil", "5"))),
            situation().word("ice", "yes").word("fan", "no").amount("coil", "6"));
    assertEquals(List.of("ice", "coil"), subjects(((RuleTrace.Fired) rule).because()));
  }

  @Test
  void aRuleThatCannotFireNamesTheTestsThatFailed() {
    RuleTrace rule = trace(all(ICE, FAN), situation().word("ice", "no"));
    TestTrace failed = ((RuleTrace.CannotFire) rule).failed().get(0);
    assertEquals("ice", failed.test().subject());
    assertTrue(failed.wanted());
    assertEquals(
        new Found.OfReading(Optional.of(new Value.Word("no")), new TreeMap<>(), List.of()),
        failed.found());
  }

  @Test
  void belowANotTheTestWasWantedToFail() {
    RuleTrace rule = trace(not(any(ICE, FAN)), situation().word("ice", "no").word("fan", "yes"));
    TestTrace failed = ((RuleTrace.CannotFire) rule).failed().get(0);
    assertEquals("fan", failed.test().subject());
    assertEquals(false, failed.wanted());
  }

  @Test
  void aNotOfANotWantsTheTestToHold() {
    RuleTrace rule = trace(not(not(ICE)), situation().word("ice", "yes"));
    assertEquals(true, ((RuleTrace.Fired) rule).because().get(0).wanted());
  }

  @Test
  void anAnyThatFailsNamesEveryPart() {
    RuleTrace rule = trace(any(ICE, FAN), situation().word("ice", "no").word("fan", "no"));
    assertEquals(List.of("ice", "fan"), subjects(((RuleTrace.CannotFire) rule).failed()));
  }

  @Test
  void aRuleThatCouldFireNamesWhatIsOpen() {
    RuleTrace.CouldFire rule =
        (RuleTrace.CouldFire)
            trace(all(ICE, FAN, above("coil", "5")), situation().word("ice", "yes"));
    assertEquals(List.of("fan", "coil"), subjects(rule.open()));
    assertEquals(Set.of("coil", "fan"), rule.missing());
  }

  @Test
  void aReadingThatCannotBeTakenIsOpenButNotMissing() {
    RuleTrace.CouldFire rule =
        (RuleTrace.CouldFire) trace(all(ICE, FAN), situation().notTaken("ice"));
    assertEquals(List.of("ice", "fan"), subjects(rule.open()));
    assertEquals(Set.of("fan"), rule.missing());
    assertTrue(trace(notTaken("ice"), situation().notTaken("ice")) instanceof RuleTrace.Fired);
  }

  @Test
  void aReadingThatTheMachineLacksRulesTheTestOut() {
    for (Condition test : List.of(is("drain", "yes"), not(is("drain", "yes")))) {
      KnowledgeBase base = withDrain(any(ICE, test));
      RuleTrace rule = run(base, fell().word("ice", "no")).rules().get("r");
      List<TestTrace> failed = ((RuleTrace.CannotFire) rule).failed();
      assertEquals(List.of("ice", "drain"), subjects(failed));
      assertEquals(new Found.Lacking(), failed.get(1).found());
      assertEquals(Set.of(), failed.get(1).missing());
    }
  }

  @Test
  void aReadingThatTheMachineMayHaveIsMissing() {
    assertEquals(Set.of("drain"), missing(withDrain(is("drain", "yes")), situation()));
  }

  private static KnowledgeBase withDrain(Condition when) {
    return world()
        .reading("drain", yesNo(), Access.OUTSIDE, 1, is("family", "tarn"))
        .symptom(symptom("s").concludes("r", when, "a"))
        .build();
  }

  private static Set<String> missing(KnowledgeBase base, SituationBuilder situation) {
    return ((RuleTrace.CouldFire) run(base, situation).rules().get("r")).missing();
  }

  @Test
  void equipmentThatIsNotKnownIsMissing() {
    RuleTrace.CouldFire rule = (RuleTrace.CouldFire) trace(is("family", "fell"), situation());
    assertEquals(new Found.OfEquipment(sorted("fell", "tarn")), rule.open().get(0).found());
    assertEquals(Set.of("family"), rule.missing());
  }

  @Test
  void oneBuildLeftAmongSeveralFactsIsKnown() {
    RuleTrace rule = trace(is("family", "fell"), situation().equipment("software", "2.10"));
    assertEquals(
        new Found.OfEquipment(sorted("fell")), ((RuleTrace.Fired) rule).because().get(0).found());
  }

  @Test
  void againstLimitsTheDriverIsMissingToo() {
    assertEquals(Set.of("ambient", "pressure"), missing(fell()));
    assertEquals(Set.of("ambient"), missing(fell().amount("pressure", "9")));
    assertEquals(Set.of("pressure"), missing(fell().amount("ambient", "9")));
    assertEquals(Set.of(), missing(fell().amount("pressure", "9").notTaken("ambient")));
    assertEquals(Set.of("ambient", "family"), missing(situation().amount("pressure", "9")));
  }

  private static Set<String> missing(SituationBuilder situation) {
    return ((RuleTrace.CouldFire) trace(HIGH, situation)).missing();
  }

  @Test
  void aTestAgainstLimitsShowsThem() {
    RuleTrace rule = trace(HIGH, fell().amount("pressure", "7").amount("ambient", "15"));
    Band band = new Band(Optional.of(BigFraction.of(3)), Optional.of(BigFraction.of(7)));
    assertEquals(
        new Found.OfReading(
            Optional.of(new Value.Number(BigFraction.of(7))), new TreeMap<>(), List.of(band)),
        ((RuleTrace.CannotFire) rule).failed().get(0).found());
  }

  @Test
  void limitsWithoutARowAreNoted() {
    Trace trace = run(base(HIGH), fell().amount("pressure", "9").amount("ambient", "21"));
    assertEquals(Status.NOTHING_YET, trace.status());
    Note.LimitsMissing note = (Note.LimitsMissing) trace.notes().get(0);
    assertEquals("pressure", note.reading());
    assertEquals("[FL-1 with software 2.10]", note.builds().toString());
    assertEquals(List.of(BigFraction.of(21)), note.at());
  }

  @Test
  void limitsThatOnlyWaitForTheirDriverAreNotNoted() {
    assertEquals(List.of(), run(base(HIGH), fell().amount("pressure", "9")).notes());
    assertEquals(List.of(), run(base(HIGH), fell().amount("ambient", "99")).notes());
  }

  @Test
  void limitsThatEveryBuildAgreesOnDecideWithoutTheModel() {
    SituationBuilder high = situation().amount("pressure", "11").amount("ambient", "15");
    assertTrue(trace(HIGH, high) instanceof RuleTrace.Fired);
    SituationBuilder between = situation().amount("pressure", "8").amount("ambient", "15");
    assertTrue(trace(HIGH, between) instanceof RuleTrace.CouldFire);
    assertTrue(trace(HIGH, between.equipment("family", "fell")) instanceof RuleTrace.Fired);
  }

  private static List<String> subjects(List<TestTrace> tests) {
    return tests.stream().map(trace -> trace.test().subject()).toList();
  }

  private static SortedSet<String> sorted(String... values) {
    return new TreeSet<>(List.of(values));
  }

  private static SituationBuilder fell() {
    return situation().equipment("family", "fell");
  }

  private static RuleTrace trace(Condition when, SituationBuilder situation) {
    return run(base(when), situation).rules().get("r");
  }

  private static Trace run(KnowledgeBase base, SituationBuilder situation) {
    return new Runner(base, RuleCompiler.compile(base)).run("s", situation.build());
  }

  private static KnowledgeBase base(Condition when) {
    return world().symptom(symptom("s").concludes("r", when, "a")).build();
  }

  private static KnowledgeBaseBuilder world() {
    return new KnowledgeBaseBuilder()
        .model("FL-1", "fell", Map.of(), "2.10")
        .model("TN-1", "tarn", Map.of())
        .yesNo("ice")
        .yesNo("fan")
        .measured("coil", "°C", "0", "100")
        .measured("ambient", "°C", "0", "100")
        .measured("pressure", "bar(g)", "0", "30")
        .limits(
            interpolated("pressure", "ambient", "family")
                .at(is("family", "fell"), "10", "2", "6")
                .at(is("family", "fell"), "20", "4", "8")
                .at(is("family", "tarn"), "0", "4", "10")
                .at(is("family", "tarn"), "50", "4", "10")
                .build());
  }

  private static Domain yesNo() {
    return new Domain.Choice(
        List.of(new NamedValue("yes", "Yes"), new NamedValue("no", "No")), true);
  }
}
