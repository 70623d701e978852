package io.faultwright.analysis.random;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.dmn.DecisionEngine;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.run.Runner;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/**
 * The exported decision tables of random knowledge bases in the decision engine of Drools, against
 * the rules, on random readings, ends of limits among them, some of them not known.
 */
class RandomDecisionTablesTest {
  private static final int COUNT = Integer.getInteger("random.tables", 6);
  private static final int POINTS = 25;

  @Test
  void tablesSayWhatTheRulesSay() {
    int compared = 0;
    int answered = 0;
    for (long seed = 0; seed < COUNT; seed++) {
      KnowledgeBase knowledge = RandomKnowledge.of(seed);
      DecisionEngine tables = DecisionEngine.of(knowledge);
      Runner rules = new Runner(knowledge, RuleCompiler.compile(knowledge));
      for (Situation point : some(knowledge, seed)) {
        assertEquals(
            DecisionEngine.expected(rules.verdict(RandomKnowledge.SYMPTOM, point)),
            tables.told(RandomKnowledge.SYMPTOM, point),
            seed + " " + point);
        compared++;
        answered += rules.verdict(RandomKnowledge.SYMPTOM, point).answers().isEmpty() ? 0 : 1;
      }
    }
    assertTrue(answered > compared / 10, answered + " answered of " + compared);
  }

  /** Machines with random readings, some of them not known; quarters meet every end of a limit. */
  private static List<Situation> some(KnowledgeBase knowledge, long seed) {
    Random random = new Random(seed);
    List<Build> builds = knowledge.equipment().builds();
    List<Situation> some = new ArrayList<>();
    for (int i = 0; i < POINTS; i++) {
      SortedMap<String, Value> readings = new TreeMap<>();
      for (Reading reading : knowledge.readings().values()) {
        if (reading.derived().isEmpty() && random.nextInt(6) > 0) {
          readings.put(reading.id(), value(reading, random));
        }
      }
      some.add(new Situation(builds.get(random.nextInt(builds.size())).facts(), readings));
    }
    return some;
  }

  private static Value value(Reading reading, Random random) {
    return reading
        .domain()
        .match(
            measured -> {
              int low = measured.range().low().orElseThrow().value().intValue();
              int high = measured.range().high().orElseThrow().value().intValue();
              int quarters = random.nextInt(4 * (high - low) + 1);
              return new Value.Number(BigFraction.of(4 * low + quarters, 4));
            },
            choice -> new Value.Word(choice.ids().get(random.nextInt(choice.ids().size()))));
  }
}
