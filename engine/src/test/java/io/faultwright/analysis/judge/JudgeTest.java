package io.faultwright.analysis.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.judge.Ruling.Stage;
import io.faultwright.analysis.random.RandomKnowledge;
import io.faultwright.analysis.random.RandomSituations;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.run.Runner;
import io.faultwright.run.Status;
import io.faultwright.run.Trace;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Plain evaluation against Drools, on whole and on half-known situations. */
class JudgeTest {
  private static final int BASES = Integer.getInteger("random.judged", 150);
  private static final int SITUATIONS = 40;

  private static final Map<Stage, Set<Status>> SAME =
      Map.of(
          Stage.CANNOT_HAPPEN, Set.of(Status.TAKE_AGAIN),
          Stage.NOT_THIS_SYMPTOM, Set.of(Status.NOT_THIS_SYMPTOM),
          Stage.ASK_FIRST, Set.of(Status.ASK_FIRST),
          Stage.SENT_ELSEWHERE, Set.of(Status.REFERRED),
          Stage.WORKED, Set.of(Status.ANSWERED, Status.NOTHING_YET, Status.NO_ANSWER),
          Stage.NO_SUCH_MACHINE,
              Set.of(Status.NO_SUCH_EQUIPMENT, Status.DOES_NOT_APPLY, Status.CHECK_VALUES));

  @Test
  void saysWhatDroolsSays() {
    Map<Stage, Integer> seen = new EnumMap<>(Stage.class);
    for (long seed = 0; seed < BASES; seed++) {
      KnowledgeBase kb = RandomKnowledge.of(seed);
      Symptom symptom = kb.symptoms().get(RandomKnowledge.SYMPTOM);
      Runner runner = new Runner(kb, RuleCompiler.compile(kb));
      Judge judge = new Judge(kb);
      for (Situation situation : RandomSituations.of(kb, symptom, seed, SITUATIONS)) {
        Ruling ruling = judge.decide(symptom, judge.observe(symptom, situation));
        Trace trace = runner.run(symptom.id(), situation);
        String where = seed + " " + situation;
        assertTrue(SAME.get(ruling.stage()).contains(trace.status()), () -> where + trace.status());
        assertEquals(trace.answers(), ruling.answers(), where);
        assertEquals(trace.fired(), ruling.fired(), where);
        seen.merge(ruling.stage(), 1, Integer::sum);
      }
    }
    assertTrue(seen.getOrDefault(Stage.WORKED, 0) > BASES, seen::toString);
    assertTrue(seen.getOrDefault(Stage.CANNOT_HAPPEN, 0) > 0, seen::toString);
    assertTrue(seen.getOrDefault(Stage.ASK_FIRST, 0) > 0, seen::toString);
  }
}
