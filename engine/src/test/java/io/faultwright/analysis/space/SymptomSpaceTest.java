package io.faultwright.analysis.space;

import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.limits;
import static io.faultwright.model.Conditions.not;
import static io.faultwright.model.Conditions.notTaken;
import static io.faultwright.model.SymptomBuilder.conclude;
import static io.faultwright.model.SymptomBuilder.exclude;
import static io.faultwright.model.SymptomBuilder.symptom;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.finding.Share;
import io.faultwright.model.Answer;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.LimitsTableBuilder;
import io.faultwright.model.SymptomBuilder;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Where a symptom's rules answer; each set is said in other words and must be the same diagram. */
class SymptomSpaceTest {
  private static final Condition P = is("p", "yes");
  private static final Condition Q = is("q", "yes");
  private static final Condition LO = is("s", "lo");

  private static KnowledgeBaseBuilder base() {
    return new KnowledgeBaseBuilder()
        .model("A-1", "alpha", Map.of())
        .model("B-1", "beta", Map.of())
        .yesNo("p")
        .yesNo("q")
        .choice("s", "lo", "ok", "hi")
        .measured("d", "K", "0", "9")
        .measured("m", "K", "0", "9")
        .limits(
            LimitsTableBuilder.stepped("m", "d")
                .over(Condition.ALWAYS, "0", "5", "1", "2")
                .over(Condition.ALWAYS, "5", "9", "3", "4")
                .build());
  }

  private static SymptomSpace space(SymptomBuilder symptom) {
    return SymptomSpace.of(base().build(), symptom.build());
  }

  /** Consistent situations in which a condition is true. */
  private static int where(SymptomSpace symptom, Condition condition) {
    Space space = symptom.space();
    return space.diagrams().and(space.consistent(), space.truth(condition).isTrue());
  }

  /** Two rules that may both fire, one of them with a rule that speaks instead of it. */
  private static SymptomBuilder rules() {
    return symptom("x")
        .never("n", is("s", "hi"))
        .rule("r1", P, conclude("a", "b"))
        .rule("r2", all(Q, LO), conclude("b"))
        .rule("r3", all(P, Q), conclude("c"), "r1")
        .rule("r4", not(P), exclude("a"));
  }

  @Test
  void everyAnswerWithTheSituationsThatGetIt() {
    SymptomSpace space = space(rules());
    Condition possible = not(is("s", "hi"));
    Condition first = all(P, not(Q), possible);
    assertEquals(
        Map.of(
            new Answer.OfFault("a"), where(space, first),
            new Answer.OfFault("b"), joined(space, first, all(Q, LO)),
            new Answer.OfFault("c"), where(space, all(P, Q, possible))),
        space.answers());
  }

  private static int joined(SymptomSpace space, Condition one, Condition other) {
    return space.space().diagrams().or(where(space, one), where(space, other));
  }

  /** A rule that only rules a fault out answers nothing. */
  @Test
  void whatNoAnswerReaches() {
    SymptomSpace space = space(rules());
    assertEquals(where(space, all(not(P), not(Q), LO)), rest(space, LO));
    assertEquals(where(space, all(not(P), is("s", "ok"))), rest(space, is("s", "ok")));
    assertEquals(Diagrams.NONE, rest(space, is("s", "hi")));
  }

  private static int rest(SymptomSpace space, Condition condition) {
    return space.space().diagrams().and(space.unanswered().whole(), where(space, condition));
  }

  @Test
  void whatSomeRulesLeaveOfSomeSituations() {
    SymptomSpace space = space(rules());
    int all = where(space, Q);
    assertEquals(where(space, all(Q, P)), space.without(where(space, all(Q, P)), List.of("r4")));
    assertEquals(
        joined(space, all(Q, not(P), not(LO)), all(Q, is("s", "hi"))),
        space.without(all, List.of("r2", "r3")));
  }

  @Test
  void rulesThatFireInOneSituation() {
    assertEquals(
        List.of(new RulePair("r2", "r3"), new RulePair("r2", "r4")), space(rules()).meetings());
  }

  @Test
  void whatComesFirstIsSentElsewhereInOrder() {
    SymptomSpace space = space(symptom("x").first(P, "y").first(Q, "z").concludes("r1", LO, "a"));
    assertEquals(List.of(where(space, not(P)), where(space, all(P, not(Q)))), space.referrals());
    assertEquals(where(space, all(P, Q)), space.workable());
    assertEquals(where(space, all(P, Q, LO)), space.firing("r1"));
    assertThrows(UnsupportedOperationException.class, () -> space.referrals().add(1));
  }

  /** While p cannot be taken nobody knows whether the work comes first: no referral, no answer. */
  @Test
  void whatMayComeFirstIsNeitherSentElsewhereNorWorked() {
    SymptomSpace space = space(symptom("x").first(P, "y").concludes("r1", notTaken("p"), "a"));
    assertEquals(List.of(where(space, is("p", "no"))), space.referrals());
    assertEquals(where(space, P), space.workable());
    assertEquals(Diagrams.NONE, space.firing("r1"));
    assertEquals(joined(space, P, notTaken("p")), space.unanswered().whole());
  }

  @Test
  void onlyEquipmentItAppliesTo() {
    SymptomBuilder beta = symptom("x").applies(is("family", "beta")).concludes("r1", P, "a");
    assertEquals(
        List.of("B-1"),
        SymptomSpace.builds(base().build(), beta.build()).stream()
            .map(build -> build.model().id())
            .toList());
    Axis equipment = space(beta).space().axes().get(0);
    assertEquals(1, equipment.cells().size());
    assertEquals(1, ((Cell.Builds) equipment.cells().get(0)).builds().size());
  }

  @Test
  void withinAWiderSpace() {
    SymptomSpace wide = space(rules());
    SymptomSpace narrow =
        SymptomSpace.within(
            wide.space(),
            symptom("y").recognise(P).concludes("r1", Q, "a").build(),
            List.of(),
            where(wide, LO));
    assertEquals(where(wide, all(P, LO)), narrow.possible());
    assertEquals(where(wide, all(P, Q, LO)), narrow.firing("r1"));
  }

  /** Of p, q and the three s, without s: hi, eight situations are left. */
  @Test
  void sharesOfWhatIsNotSentElsewhere() {
    SymptomSpace space = space(rules());
    assertEquals(new Share(0.5, 0.5, true), space.share(where(space, P)));
    assertEquals(new Share(0.25, 0.25, true), space.share(where(space, all(P, LO))));
    SymptomSpace first = space(symptom("x").first(P, "y").concludes("r1", all(Q, LO), "a"));
    assertEquals(1.0 / 6, first.share(first.firing("r1")).low(), 1e-9);
    SymptomSpace nothing = space(symptom("x").never("n", Condition.ALWAYS).concludes("r1", P, "a"));
    assertEquals(new Share(0, 0, true), nothing.share(where(nothing, P)));
  }

  /** A set that never becomes whole; a quarter to a half of all cell combinations. */
  private static final Bounded OPEN =
      new Bounded() {
        @Override
        public int whole() {
          throw new OutOfTime();
        }

        @Override
        public int known() {
          return Diagrams.NONE;
        }

        @Override
        public double atLeast() {
          return 0.25;
        }

        @Override
        public double atMost() {
          return 0.5;
        }
      };

  /** Two thirds of the combinations are possible, as {@code s: hi} is not. */
  @Test
  void boundsAreSharesOfThePossible() {
    SymptomSpace space = space(rules());
    Share share = space.share(OPEN);
    assertEquals(0.375, share.low(), 1e-8);
    assertEquals(0.75, share.high(), 1e-8);
    assertEquals(false, share.exact());
    SymptomSpace few =
        space(symptom("x").never("n", not(all(P, Q, LO))).concludes("r1", all(P, Q, LO), "a"));
    assertEquals(new Share(1, 1, false), few.share(OPEN));
    Bounded whole = new Union(space.space().diagrams(), new int[] {where(space, P)});
    assertEquals(new Share(0.5, 0.5, true), space.share(whole));
  }

  /** Where cells lie in one group, their number says nothing about situations. */
  @Test
  void noBoundsWhereCellsDoNotCount() {
    SymptomSpace space = space(symptom("x").concludes("r1", limits("m", Side.ABOVE), "a"));
    assertThrows(OutOfTime.class, () -> space.share(OPEN));
  }

  @Test
  void aRuleIsSilentWhereAnotherMaySpeakInsteadOfIt() {
    SymptomSpace space =
        space(
            symptom("x")
                .concludes("r1", Q, "a")
                .concludes("r2", P, "b", "r1")
                .concludes("r3", notTaken("p"), "c"));
    assertEquals(where(space, all(Q, is("p", "no"))), space.firing("r1"));
    assertEquals(
        Set.of("a", "b", "c"),
        Set.copyOf(space.answers().keySet().stream().map(Answer::name).toList()));
  }
}
