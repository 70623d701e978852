package io.faultwright.analysis.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.random.RandomKnowledge;
import io.faultwright.change.Outcome;
import io.faultwright.change.Outcome.Kind;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.pipeline.Comparing;
import io.faultwright.pipeline.Watch;
import io.faultwright.run.Runner;
import io.faultwright.run.Verdict;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * Two random revisions: what the analysis says of a situation in either of them, against Drools.
 * {@code -Drandom.changes=5000} runs more pairs.
 */
class RandomChangeTest {
  private static final int COUNT = Integer.getInteger("random.changes", 100);
  private static final int POINTS = 150;

  @Test
  void outcomesInBothRevisionsEqualThoseOfDrools() {
    Set<Kind> seen = EnumSet.noneOf(Kind.class);
    long[] shown =
        LongStream.range(0, COUNT)
            .parallel()
            .mapToObj(seed -> check(seed, seen))
            .reduce(new long[2], (a, b) -> new long[] {a[0] + b[0], a[1] + b[1]});
    assertTrue(shown[0] > COUNT / 4, "pairs with a changed region: " + shown[0]);
    assertTrue(shown[1] > COUNT / 50, "pairs without one: " + shown[1]);
    assertEquals(EnumSet.allOf(Kind.class), seen);
  }

  private static long[] check(long seed, Set<Kind> seen) {
    KnowledgeBase before = RandomKnowledge.of(seed, Integer.MAX_VALUE, 0);
    KnowledgeBase after = RandomKnowledge.of(seed, (int) (seed % 90), seed + 1);
    Joined joined = new Joined(before, after);
    ChangeAnalysis analysis = new ChangeAnalysis(joined, RandomKnowledge.SYMPTOM);
    Optional<OutcomePairs> found = analysis.outcomes();
    if (found.isEmpty()) {
      return new long[2];
    }
    OutcomePairs outcomes = found.get();
    SharedPoints points = new SharedPoints(outcomes.space(), seed);
    Runner old = new Runner(before, RuleCompiler.compile(before));
    Runner current = new Runner(after, RuleCompiler.compile(after));
    for (int i = 0; i < POINTS; i++) {
      Situation point = points.next();
      assertTrue(
          points.holds(outcomes.space().consistent(), point), () -> seed + " not real: " + point);
      compare(seed + " before", points, point, outcomes.before(), old, analysis.asBefore(point));
      compare(seed + " after", points, point, outcomes.after(), current, analysis.asAfter(point));
    }
    synchronized (seen) {
      List.of(outcomes.before(), outcomes.after())
          .forEach(sets -> sets.keySet().forEach(outcome -> seen.add(outcome.kind())));
    }
    boolean same =
        new Comparing(Watch.NOBODY)
            .compare(before, after).comparison().symptoms().stream()
                .allMatch(symptom -> symptom.unchanged());
    return new long[] {same ? 0 : 1, same ? 1 : 0};
  }

  private static void compare(
      String where,
      SharedPoints points,
      Situation shared,
      SortedMap<Outcome, Integer> sets,
      Runner runner,
      Situation own) {
    List<Outcome> here =
        sets.entrySet().stream()
            .filter(set -> points.holds(set.getValue(), shared))
            .map(set -> set.getKey())
            .toList();
    assertEquals(1, here.size(), () -> where + ": outcomes " + here + " of " + shared);
    Outcome said = here.get(0).kind() == Kind.NO_FIGURE ? Outcome.of(Kind.UNANSWERED) : here.get(0);
    Verdict verdict = runner.verdict(RandomKnowledge.SYMPTOM, own);
    assertEquals(of(verdict), said, () -> where + ": " + own + " " + verdict);
  }

  private static Outcome of(Verdict verdict) {
    return switch (verdict.status()) {
      case DOES_NOT_APPLY -> Outcome.of(Kind.NOT_OFFERED);
      case CHECK_VALUES, TAKE_AGAIN -> Outcome.of(Kind.CANNOT_HAPPEN);
      case NOT_THIS_SYMPTOM -> Outcome.of(Kind.NOT_RECOGNISED);
      case REFERRED -> new Outcome(Kind.SENT_ELSEWHERE, verdict.answers());
      case ANSWERED ->
          new Outcome(
              verdict.contradictory() ? Kind.CONTRADICTION : Kind.ANSWERED, verdict.answers());
      case ASK_FIRST, NOTHING_YET, NO_ANSWER -> Outcome.of(Kind.UNANSWERED);
      default -> throw new AssertionError(verdict);
    };
  }
}
