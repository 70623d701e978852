package io.faultwright.run;

import static io.faultwright.model.Conditions.above;
import static io.faultwright.model.Conditions.atMost;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.limits;
import static io.faultwright.model.SituationBuilder.situation;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.LimitsTableBuilder;
import io.faultwright.model.SituationBuilder;
import io.faultwright.model.SymptomBuilder;
import io.faultwright.model.Value;
import io.faultwright.quantity.Decimals;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Rules on a reading that is computed from two others. */
class DerivedReadingTest {
  private static final KnowledgeBase BASE =
      new KnowledgeBaseBuilder()
          .model("FL-1", "fell", Map.of())
          .model("TN-1", "tarn", Map.of())
          .measured("room", "°C", "-40", "30")
          .measured("coil", "°C", "-45", "30")
          .applies("coil", is("family", "fell"))
          .difference("gap", "room", "coil")
          .limits(
              LimitsTableBuilder.interpolated("gap", "room")
                  .at(Condition.ALWAYS, "-20", "2", "6")
                  .at(Condition.ALWAYS, "0", "4", "10")
                  .build())
          .symptom(
              SymptomBuilder.symptom("s")
                  .concludes("far", above("gap", "8"), "dirty")
                  .concludes("near", atMost("gap", "8"), "empty"))
          .symptom(
              SymptomBuilder.symptom("judged")
                  .concludes("over", limits("gap", Side.ABOVE), "dirty")
                  .concludes("not-over", limits("gap", Side.BELOW, Side.WITHIN), "empty"))
          .build();

  private static Trace run(String symptom, SituationBuilder situation) {
    return new Runner(BASE, RuleCompiler.compile(BASE)).run(symptom, situation.build());
  }

  private static SituationBuilder fell() {
    return situation().equipment("model", "FL-1");
  }

  @Test
  void isComputedOnceBothOperandsAreKnown() {
    assertEquals(
        Set.of("near"), run("s", fell().amount("room", "-5").amount("coil", "-13")).fired());
    assertEquals(
        Set.of("far"), run("s", fell().amount("room", "-5").amount("coil", "-13.01")).fired());
  }

  /** At -10 °C the limit is half-way between 6 and 10, which is 8. */
  @Test
  void isJudgedAgainstLimitsThatFollowItsOwnOperand() {
    assertEquals(
        Set.of("not-over"),
        run("judged", fell().amount("room", "-10").amount("coil", "-18")).fired());
    assertEquals(
        Set.of("over"),
        run("judged", fell().amount("room", "-10").amount("coil", "-18.1")).fired());
  }

  @Test
  void asksForTheOperandThatIsMissing() {
    assertEquals(Optional.of("coil"), run("s", fell().amount("room", "-5")).next());
    assertEquals(Optional.of("room"), run("s", fell().amount("coil", "-5")).next());
    assertEquals(Optional.of("coil"), run("s", fell()).next());
  }

  @Test
  void asksForNothingWhereAnOperandCannotBeTaken() {
    Trace trace = run("s", fell().notTaken("coil"));
    assertEquals(Optional.empty(), trace.next());
    assertEquals(Set.of(), trace.fired());
  }

  @Test
  void isLackingWhereAnOperandIs() {
    Trace trace = run("s", situation().equipment("model", "TN-1").amount("room", "-5"));
    assertTrue(
        trace.rules().values().stream().allMatch(RuleTrace.CannotFire.class::isInstance),
        trace::toString);
  }

  @Test
  void saysFromWhatItWasComputed() {
    Trace trace = run("s", fell().amount("room", "-5").amount("coil", "-15"));
    RuleTrace.Fired fired = (RuleTrace.Fired) trace.rules().get("far");
    Found.OfReading found = (Found.OfReading) fired.because().get(0).found();
    assertEquals(Optional.of(number("10")), found.value());
    assertEquals(
        new TreeMap<>(Map.of("room", number("-5"), "coil", number("-15"))), found.operands());
  }

  @Test
  void operandsOutOfRangeAreAskedBack() {
    Trace trace = run("s", fell().amount("room", "300").amount("coil", "-5"));
    assertEquals(Status.CHECK_VALUES, trace.status());
    assertEquals(1, trace.notes().size());
  }

  private static Value number(String decimal) {
    return new Value.Number(Decimals.parse(decimal));
  }
}
