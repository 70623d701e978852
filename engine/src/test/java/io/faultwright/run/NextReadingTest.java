package io.faultwright.run;

import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.SituationBuilder.situation;
import static io.faultwright.model.SymptomBuilder.symptom;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Access;
import io.faultwright.model.Condition;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.NamedValue;
import io.faultwright.model.SituationBuilder;
import io.faultwright.model.SymptomBuilder;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NextReadingTest {
  private static final Condition PANEL = is("panel", "yes");
  private static final Condition QUICK = is("quick", "yes");
  private static final Condition SLOW = is("slow", "yes");
  private static final Condition SLOW_TOO = is("slow-too", "yes");

  @Test
  void mostAskedForComesFirst() {
    assertEquals(
        Optional.of("panel"),
        next(
            symptom("s").concludes("one", all(PANEL, QUICK), "a").concludes("two", PANEL, "b"),
            situation()));
  }

  @Test
  void ofEqualsTheEasierThenTheQuickerThenTheFirstById() {
    assertEquals(
        Optional.of("quick"),
        next(symptom("s").concludes("r", all(PANEL, SLOW, QUICK), "a"), situation()));
    assertEquals(
        Optional.of("slow"),
        next(symptom("s").concludes("r", all(PANEL, SLOW_TOO, SLOW), "a"), situation()));
  }

  @Test
  void onlyRulesThatCouldFireCount() {
    SymptomBuilder symptom =
        symptom("s")
            .concludes("one", all(QUICK, PANEL), "a")
            .concludes("two", all(QUICK, PANEL), "b")
            .concludes("three", SLOW, "c");
    assertEquals(Optional.of("slow"), next(symptom, situation().word("quick", "no")));
  }

  @Test
  void silencedRulesDoNotCount() {
    SymptomBuilder symptom =
        symptom("s").concludes("one", PANEL, "a").concludes("two", QUICK, "b", "one");
    assertEquals(Optional.empty(), next(symptom, situation().word("quick", "yes")));
  }

  @Test
  void theNameplateIsReadBeforeAReadingOfEqualUse() {
    SymptomBuilder symptom = symptom("s").concludes("r", all(QUICK, is("family", "fell")), "a");
    assertEquals(Optional.of("family"), next(symptom, situation()));
    assertEquals(Optional.of("quick"), next(symptom, situation().equipment("model", "FL-1")));
  }

  @Test
  void whatCannotBeTakenIsNotAskedAgain() {
    SymptomBuilder symptom = symptom("s").concludes("r", all(QUICK, SLOW), "a");
    assertEquals(Optional.of("slow"), next(symptom, situation().notTaken("quick")));
  }

  @Test
  void nothingIsAskedWhereNothingIsOpen() {
    SymptomBuilder symptom = symptom("s").concludes("r", QUICK, "a");
    assertEquals(Optional.empty(), next(symptom, situation().word("quick", "yes")));
  }

  @Test
  void whatMustBeRightFirstIsAskedFirst() {
    SymptomBuilder symptom = symptom("s").first(SLOW, "other").concludes("r", QUICK, "a");
    assertEquals(Optional.of("slow"), next(symptom, situation()));
  }

  private static Optional<String> next(SymptomBuilder symptom, SituationBuilder situation) {
    KnowledgeBase base =
        new KnowledgeBaseBuilder()
            .model("FL-1", "fell", Map.of())
            .model("TN-1", "tarn", Map.of())
            .reading("panel", yesNo(), Access.PANEL, 1, Condition.ALWAYS)
            .reading("quick", yesNo(), Access.OUTSIDE, 1, Condition.ALWAYS)
            .reading("slow", yesNo(), Access.OUTSIDE, 5, Condition.ALWAYS)
            .reading("slow-too", yesNo(), Access.OUTSIDE, 5, Condition.ALWAYS)
            .symptom(symptom)
            .build();
    return new Runner(base, RuleCompiler.compile(base)).run("s", situation.build()).next();
  }

  private static Domain yesNo() {
    return new Domain.Choice(
        List.of(new NamedValue("yes", "Yes"), new NamedValue("no", "No")), true);
  }
}
