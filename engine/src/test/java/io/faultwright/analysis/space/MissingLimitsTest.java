package io.faultwright.analysis.space;

import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.limits;
import static io.faultwright.model.Conditions.not;
import static io.faultwright.model.SymptomBuilder.symptom;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.LimitsTableBuilder;
import io.faultwright.model.SymptomBuilder;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Where a figure that a table lacks would change the answer. */
class MissingLimitsTest {
  private static final Condition ALPHA = is("family", "alpha");
  private static final Condition P = is("p", "yes");
  private static final Condition LOW = limits("m", Side.BELOW);
  private static final Condition HIGH = limits("n", Side.ABOVE);

  /** Alpha has figures for both readings, beta for none. */
  private static SymptomSpace space(SymptomBuilder symptom) {
    KnowledgeBaseBuilder base =
        new KnowledgeBaseBuilder()
            .model("A-1", "alpha", Map.of())
            .model("B-1", "beta", Map.of())
            .yesNo("p")
            .measured("m", "K", "0", "9")
            .measured("n", "K", "0", "9");
    for (String id : new String[] {"m", "n"}) {
      base.limits(LimitsTableBuilder.fixed(id, "family").row(ALPHA, "2", "4").build());
    }
    return SymptomSpace.of(base.build(), symptom.build());
  }

  private static int where(SymptomSpace symptom, Condition condition) {
    Space space = symptom.space();
    return space.diagrams().and(space.consistent(), space.truth(condition).isTrue());
  }

  @Test
  void onlyWhereTheAnswerHangsOnIt() {
    SymptomSpace space = space(symptom("x").concludes("r1", all(P, LOW), "a"));
    int open = where(space, all(P, not(ALPHA)));
    assertEquals(open, new MissingLimits(space).undecided());
    assertEquals(Map.of("m", open), new MissingLimits(space).byReading());
  }

  @Test
  void twoFiguresThatMatterOnlyTogether() {
    SymptomSpace space = space(symptom("x").concludes("r1", all(P, LOW, HIGH), "a"));
    int open = where(space, all(P, not(ALPHA)));
    assertEquals(open, new MissingLimits(space).undecided());
    assertEquals(Map.of("m", open, "n", open), new MissingLimits(space).byReading());
  }

  /** With p the answer is a anyway; without it hangs on m. */
  @Test
  void anAnswerThatIsGivenAnywayHangsOnNothing() {
    SymptomSpace space = space(symptom("x").concludes("r1", LOW, "a").concludes("r2", P, "a"));
    int open = where(space, all(not(P), not(ALPHA)));
    assertEquals(Map.of("m", open), new MissingLimits(space).byReading());
  }

  @Test
  void workThatComesFirstIsAnOutcomeToo() {
    SymptomSpace space = space(symptom("x").first(not(LOW), "y").concludes("r1", P, "a"));
    int open = where(space, not(ALPHA));
    assertEquals(open, new MissingLimits(space).undecided());
  }

  @Test
  void nothingIsMissingWhereEveryFigureIsThere() {
    SymptomSpace space = space(symptom("x").applies(ALPHA).concludes("r1", LOW, "a"));
    assertEquals(Diagrams.NONE, new MissingLimits(space).undecided());
    assertEquals(Map.of(), new MissingLimits(space).byReading());
  }
}
