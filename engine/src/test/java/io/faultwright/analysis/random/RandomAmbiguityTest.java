package io.faultwright.analysis.random;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.ambiguity.Distinction;
import io.faultwright.ambiguity.Distinction.Single;
import io.faultwright.ambiguity.SymptomFaults;
import io.faultwright.analysis.ambiguity.AmbiguityAnalysis;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Answer;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.run.Runner;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * What tells faults apart against brute force: every point that can matter is listed, and every set
 * of readings is tried.
 */
class RandomAmbiguityTest {
  private static final int COUNT = Integer.getInteger("random.ambiguity", 400);

  private record Shown(int pairs, int overlaps, int several) {
    Shown plus(Shown other) {
      return new Shown(pairs + other.pairs, overlaps + other.overlaps, several + other.several);
    }
  }

  @Test
  void everyPairEqualsBruteForce() {
    Shown shown =
        LongStream.range(0, COUNT)
            .parallel()
            .mapToObj(RandomAmbiguityTest::compare)
            .reduce(new Shown(0, 0, 0), Shown::plus);
    assertTrue(shown.pairs > COUNT / 2, "pairs: " + shown);
    assertTrue(shown.overlaps > COUNT / 8, "concluded at once: " + shown);
    assertTrue(shown.several > COUNT / 16, "that take several readings: " + shown);
  }

  private static Shown compare(long seed) {
    KnowledgeBase knowledge = Priced.of(RandomKnowledge.of(seed), new Random(seed));
    Symptom symptom = knowledge.symptoms().get(RandomKnowledge.SYMPTOM);
    SymptomSpace space = SymptomSpace.of(knowledge, symptom);
    Map<String, Set<List<Integer>>> paths = paths(knowledge, symptom, space);
    SymptomFaults found = new AmbiguityAnalysis(space).pairs(pair -> true);
    assertEquals(paths.keySet(), found.faults(), () -> "seed " + seed);
    Runner runner = new Runner(knowledge, RuleCompiler.compile(knowledge));
    for (Distinction pair : found.pairs()) {
      PairOracle oracle = new PairOracle(knowledge, space.space().axes(), pair.faults(), paths);
      assertEquals(oracle.words(), words(pair), () -> "seed " + seed);
      for (Single single : pair.singles()) {
        assertEquals(oracle.settles(single.reading()), single.settles(), 1e-6, () -> seed + "");
      }
      pair.overlap()
          .ifPresent(
              overlap -> {
                assertEquals(oracle.overlap(), overlap.share().low(), 1e-6, () -> seed + "");
                Set<String> told =
                    runner.verdict(symptom.id(), overlap.witness()).answers().stream()
                        .map(Answer::name)
                        .collect(Collectors.toSet());
                assertTrue(
                    told.containsAll(List.of(pair.faults().one(), pair.faults().other())),
                    () -> seed + " " + overlap);
              });
    }
    return new Shown(
        found.pairs().size(),
        (int) found.pairs().stream().filter(pair -> !pair.always()).count(),
        (int)
            found.pairs().stream()
                .flatMap(pair -> pair.cheapest().stream())
                .filter(taking -> taking.readings().size() > 1)
                .count());
  }

  private static Map<String, Set<List<Integer>>> paths(
      KnowledgeBase knowledge, Symptom symptom, SymptomSpace space) {
    Cells cells = new Cells(space);
    Oracle oracle = new Oracle(knowledge, symptom);
    Map<String, Set<List<Integer>>> paths = new TreeMap<>();
    new Points(knowledge, symptom)
        .forEach(
            point -> {
              Oracle.Fate fate = oracle.fate(point);
              if (fate.possible() && fate.worked()) {
                List<Integer> path = IntStream.of(cells.of(point, oracle)).boxed().toList();
                oracle.answers(fate).stream()
                    .filter(Answer.OfFault.class::isInstance)
                    .forEach(
                        fault ->
                            paths.computeIfAbsent(fault.name(), id -> new HashSet<>()).add(path));
              }
            });
    return paths;
  }

  private static String words(Distinction pair) {
    String apart =
        pair.cheapest()
            .map(
                taking ->
                    " by "
                        + taking.readings()
                        + " needs "
                        + pair.needed()
                        + " alone "
                        + pair.singles().stream()
                            .filter(Single::always)
                            .map(Single::reading)
                            .sorted()
                            .toList())
            .orElse(" by none");
    return pair.faults() + " " + pair.sameMachine() + " " + !pair.always() + apart;
  }
}
