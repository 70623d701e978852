package io.faultwright.analysis.mutation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.adequacy.Difference;
import io.faultwright.adequacy.MutantStatus;
import io.faultwright.adequacy.MutantStatus.Fate;
import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.analysis.judge.Judge;
import io.faultwright.analysis.random.RandomKnowledge;
import io.faultwright.analysis.random.RandomSituations;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Case;
import io.faultwright.model.Conditions;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.run.Runner;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A seeded sample of mistakes, compiled for Drools, which has to tell the same of each. */
class MistakesInDroolsTest {
  private static final int BASES = 120;
  private static final int LEAST = 200;
  private static final int EVERY = 6;

  private final Map<Fate, Integer> seen = new EnumMap<>(Fate.class);

  @Test
  void droolsTellsTheSameOfASampleOfMistakes() {
    for (long seed = 0; seed < BASES; seed++) {
      check(seed, RandomKnowledge.of(seed));
    }
    int all = seen.values().stream().mapToInt(Integer::intValue).sum();
    assertTrue(all >= LEAST, seen::toString);
    for (Fate fate : List.of(Fate.KILLED, Fate.SURVIVED, Fate.EQUIVALENT)) {
      assertTrue(seen.getOrDefault(fate, 0) >= 10, seen::toString);
    }
  }

  private void check(long seed, KnowledgeBase kb) {
    Symptom symptom = kb.symptoms().get(RandomKnowledge.SYMPTOM);
    Judge judge = new Judge(kb);
    List<Situation> situations = RandomSituations.of(kb, symptom, seed, 60);
    List<Witnessed> cases = new ArrayList<>();
    situations.stream()
        .limit(24)
        .forEach(
            one -> cases.add(recorded(cases.size(), symptom, Sighting.of(judge, symptom, one))));
    SymptomMutants mutants = new SymptomMutants(judge, symptom, cases, Deadline.NEVER);
    Runner right = runner(kb);
    for (Rule rule : symptom.rules().values()) {
      List<Variant<Symptom>> variants = new RuleVariants(kb, symptom).of(rule);
      List<MutantStatus> judged = mutants.of(rule);
      for (int i = (int) (seed % EVERY); i < variants.size(); i += EVERY) {
        confirm(kb, right, variants.get(i).changed(), judged.get(i), cases, situations);
      }
    }
  }

  private static Witnessed recorded(int number, Symptom symptom, Sighting one) {
    Case recorded =
        new Case(
            "case-" + number,
            Conditions.NOWHERE,
            symptom.id(),
            one.observed().given(),
            one.ruling().answers(),
            true,
            "",
            Optional.empty(),
            List.of());
    return new Witnessed(recorded, one);
  }

  private void confirm(
      KnowledgeBase kb,
      Runner right,
      Symptom changed,
      MutantStatus judged,
      List<Witnessed> cases,
      List<Situation> situations) {
    seen.merge(judged.fate(), 1, Integer::sum);
    Runner wrong = runner(kb.with(changed));
    String id = changed.id();
    String words = judged.mutant().words();
    for (Witnessed one : cases) {
      boolean notices =
          !wrong.run(id, one.recorded().given()).answers().equals(one.recorded().expect());
      boolean first = judged.by().equals(Optional.of(one.recorded().id()));
      assertTrue(notices || !first, words);
      assertTrue(!notices || judged.fate() == Fate.KILLED, words);
    }
    judged.shownBy().ifPresent(found -> differs(found, right, wrong, words));
    if (judged.fate() == Fate.EQUIVALENT) {
      situations.stream()
          .filter(one -> isWhole(kb, changed, one))
          .forEach(
              one ->
                  assertEquals(right.run(id, one).answers(), wrong.run(id, one).answers(), words));
    }
  }

  /** A proof is about whole situations: what is not known can come out either way. */
  private static boolean isWhole(KnowledgeBase kb, Symptom symptom, Situation one) {
    Judge judge = new Judge(kb);
    return judge.observe(symptom, one).builds().size() == 1
        && symptom.rules().values().stream()
            .flatMap(rule -> rule.when().tests())
            .map(test -> test.subject())
            .filter(kb.readings()::containsKey)
            .filter(id -> kb.readings().get(id).derived().isEmpty())
            .allMatch(one.readings()::containsKey);
  }

  private static void differs(Difference found, Runner right, Runner wrong, String words) {
    assertEquals(found.right(), right.run(found.symptom(), found.situation()).answers(), words);
    assertEquals(found.wrong(), wrong.run(found.symptom(), found.situation()).answers(), words);
    assertNotEquals(found.right(), found.wrong(), words);
  }

  private static Runner runner(KnowledgeBase kb) {
    return new Runner(kb, RuleCompiler.compile(kb));
  }
}
