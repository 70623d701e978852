package io.faultwright.analysis.random;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.gap.GapAnalysis;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.MissingLimits;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.logicng.formulas.Formula;

/**
 * Diagrams against propositional logic, on seeded random knowledge bases: LogicNG's models are
 * counted for every exact count, and satisfiability decides where something exists. What lies on a
 * real machine is taken from the diagrams; brute force judges that in {@link RandomKnowledgeTest}.
 */
class LogicOracleTest {
  private static final int COUNT = Integer.getInteger("random.logic", 300);

  private record Shown(int gaps, int overlaps, int without) {
    Shown plus(Shown other) {
      return new Shown(gaps + other.gaps, overlaps + other.overlaps, without + other.without);
    }
  }

  @Test
  void countsAndExistenceEqualThoseOfPropositionalLogic() {
    Shown shown =
        LongStream.range(0, COUNT)
            .parallel()
            .mapToObj(LogicOracleTest::compare)
            .reduce(new Shown(0, 0, 0), Shown::plus);
    assertTrue(shown.gaps > COUNT / 4, "with a gap: " + shown);
    assertTrue(shown.overlaps > COUNT / 4, "with rules that overlap: " + shown);
    assertTrue(shown.without > COUNT / 20, "without a gap: " + shown);
  }

  private static Shown compare(long seed) {
    KnowledgeBase knowledge = RandomKnowledge.of(seed);
    Symptom symptom = knowledge.symptoms().get(RandomKnowledge.SYMPTOM);
    SymptomSpace space = SymptomSpace.of(knowledge, symptom);
    if (space.possible() == Diagrams.NONE) {
      return new Shown(0, 0, 0);
    }
    return new LogicOracleTest.Comparison(seed, symptom, space).run();
  }

  /** One knowledge base, said twice. */
  private static final class Comparison {
    private final long seed;
    private final Symptom symptom;
    private final SymptomSpace space;
    private final Logic logic;
    private final Formula possible;
    private final List<Formula> referrals = new ArrayList<>();
    private final Formula workable;

    Comparison(long seed, Symptom symptom, SymptomSpace space) {
      this.seed = seed;
      this.symptom = symptom;
      this.space = space;
      this.logic = new Logic(space.space());
      this.possible = possible();
      Formula open = possible;
      for (Symptom.First first : symptom.first()) {
        referrals.add(logic.minus(open, logic.maybe(first.when())));
        open = logic.and(List.of(open, logic.surely(first.when(), true)));
      }
      this.workable = open;
    }

    private Formula possible() {
      Formula left = logic.of(space.space().consistent());
      left = logic.and(List.of(left, logic.surely(symptom.recognise(), true)));
      for (var never : space.nevers()) {
        left = logic.minus(left, logic.surely(never.when(), true));
      }
      return left;
    }

    Shown run() {
      same("possible", possible, space.possible());
      same("workable", workable, space.workable());
      Map<String, Formula> firing = new TreeMap<>();
      for (Rule rule : symptom.rules().values()) {
        firing.put(rule.id(), firing(rule));
        same(rule.id(), firing.get(rule.id()), space.firing(rule.id()));
      }
      Formula gap = gap(firing);
      same("gap", gap, GapAnalysis.gap(space));
      boolean open = logic.meet(gap, logic.of(Diagrams.ALL));
      assertEquals(open, !GapAnalysis.findings(space).isEmpty(), () -> seed + ": a gap");
      return new Shown(open ? 1 : 0, overlaps(firing) > 0 ? 1 : 0, open ? 0 : 1);
    }

    private Formula firing(Rule rule) {
      List<Condition> louder =
          symptom.rules().values().stream()
              .filter(other -> other.insteadOf().contains(rule.id()))
              .map(Rule::when)
              .toList();
      Formula holds = logic.and(List.of(workable, logic.surely(rule.when(), true)));
      return logic.minus(holds, logic.or(louder.stream().map(logic::maybe).toList()));
    }

    private Formula gap(Map<String, Formula> firing) {
      List<Formula> answered = new ArrayList<>(referrals);
      symptom.rules().values().stream()
          .filter(rule -> !rule.conclusion().answers().isEmpty())
          .forEach(rule -> answered.add(firing.get(rule.id())));
      answered.add(logic.of(new MissingLimits(space).undecided()));
      return logic.minus(possible, logic.or(answered));
    }

    private int overlaps(Map<String, Formula> firing) {
      int overlaps = 0;
      Diagrams diagrams = space.space().diagrams();
      for (String one : firing.keySet()) {
        for (String other : later(firing.keySet(), one)) {
          boolean meet = logic.meet(firing.get(one), firing.get(other));
          int common = diagrams.and(space.firing(one), space.firing(other));
          assertEquals(meet, common != Diagrams.NONE, () -> seed + ": " + one + " and " + other);
          overlaps += meet ? 1 : 0;
        }
      }
      return overlaps;
    }

    private static List<String> later(Collection<String> ids, String one) {
      return ids.stream().filter(id -> id.compareTo(one) > 0).toList();
    }

    private void same(String what, Formula formula, int diagram) {
      assertEquals(
          logic.count(formula),
          space.space().distinguishable(diagram),
          () -> seed + ": situations that can be told apart, " + what);
    }
  }
}
