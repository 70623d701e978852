package io.faultwright.analysis.random;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.contradiction.ContradictionAnalysis;
import io.faultwright.analysis.gap.GapAnalysis;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.Finding;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.run.Runner;
import io.faultwright.run.Trace;
import java.math.BigInteger;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * Analysis against brute force over every point that can matter, and against Drools on every
 * witness, over seeded random knowledge bases. {@code -Drandom.knowledge=10000} runs more of them.
 */
class RandomKnowledgeTest {
  private static final int COUNT = Integer.getInteger("random.knowledge", 1_000);

  @Test
  void gapsAndContradictionsEqualBruteForceAndDroolsAgreesOnEveryWitness() {
    long[] shown =
        LongStream.range(0, COUNT)
            .parallel()
            .mapToObj(RandomKnowledgeTest::compare)
            .reduce(new long[3], (a, b) -> new long[] {a[0] + b[0], a[1] + b[1], a[2] + b[2]});
    assertTrue(shown[0] > COUNT / 4, "knowledge bases with a gap: " + shown[0]);
    assertTrue(shown[1] > COUNT / 4, "knowledge bases with a contradiction: " + shown[1]);
    assertTrue(shown[2] > COUNT / 20, "knowledge bases without a gap: " + shown[2]);
  }

  private static long[] compare(long seed) {
    KnowledgeBase knowledge = RandomKnowledge.of(seed);
    Symptom symptom = knowledge.symptoms().get(RandomKnowledge.SYMPTOM);
    SymptomSpace space = SymptomSpace.of(knowledge, symptom);
    Cells cells = new Cells(space);
    Oracle oracle = new Oracle(knowledge, symptom);
    SortedSet<String> clashes = new TreeSet<>();
    int gap = GapAnalysis.gap(space);
    int undecided = new io.faultwright.analysis.space.MissingLimits(space).undecided();
    new Points(knowledge, symptom)
        .forEach(
            point -> {
              Oracle.Fate fate = oracle.fate(point);
              if (fate.possible()) {
                int[] path = cells.of(point, oracle);
                assertTrue(cells.holds(space.possible(), path), () -> seed + " " + point);
                boolean inGap = cells.holds(gap, path) || cells.holds(undecided, path);
                boolean unanswered = oracle.isUnanswered(fate);
                assertTrue(
                    inGap == unanswered || cells.holds(undecided, path),
                    () -> seed + " " + point + " unanswered: " + unanswered);
                clashes.addAll(oracle.clashes(fate));
                cells.seen(path);
              }
            });
    assertEquals(
        space.space().diagrams().count(space.possible()),
        BigInteger.valueOf(cells.seenCount()),
        () -> seed + ": cell combinations without a real situation");
    List<Finding> contradictions = ContradictionAnalysis.findings(space);
    assertEquals(clashes, pairs(contradictions), () -> seed + ": contradicting pairs");
    List<Finding> gaps = GapAnalysis.findings(space);
    confirm(seed, knowledge, gaps, contradictions);
    boolean gapFree = gaps.isEmpty();
    return new long[] {gapFree ? 0 : 1, contradictions.isEmpty() ? 0 : 1, gapFree ? 1 : 0};
  }

  private static SortedSet<String> pairs(List<Finding> contradictions) {
    SortedSet<String> pairs = new TreeSet<>();
    contradictions.forEach(finding -> pairs.add(String.join(" ", finding.rules())));
    return pairs;
  }

  private static void confirm(
      long seed, KnowledgeBase knowledge, List<Finding> gaps, List<Finding> contradictions) {
    Runner runner = new Runner(knowledge, RuleCompiler.compile(knowledge));
    for (Finding gap : gaps) {
      Trace trace = runner.run(RandomKnowledge.SYMPTOM, gap.witness().orElseThrow());
      assertTrue(
          trace.answers().isEmpty() && trace.status().runnable(),
          () -> seed + ": Drools answers " + gap + " with " + trace);
    }
    for (Finding contradiction : contradictions) {
      Trace trace = runner.run(RandomKnowledge.SYMPTOM, contradiction.witness().orElseThrow());
      assertTrue(
          trace.fired().containsAll(contradiction.rules()) && trace.contradictory(),
          () -> seed + ": Drools disagrees on " + contradiction + ": " + trace);
    }
  }
}
