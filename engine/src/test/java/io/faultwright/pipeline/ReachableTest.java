package io.faultwright.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.random.RandomKnowledge;
import io.faultwright.compile.Candidates;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Build;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.pipeline.Reachable.OnBuild;
import io.faultwright.pipeline.Reachable.Point;
import io.faultwright.run.Runner;
import io.faultwright.run.Verdict;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * The outcomes within the tolerances against dense sampling, over seeded random knowledge bases and
 * situations, whole and partial. {@code -Drandom.tolerance=10000} runs more of them.
 */
class ReachableTest {
  private static final int COUNT = Integer.getInteger("random.tolerance", 1_000);

  /**
   * What was seen.
   *
   * @param borderline cases with more than one outcome
   * @param missed cases in which the samples missed an outcome that has a point
   */
  private record Seen(int borderline, int missed) {
    Seen plus(Seen other) {
      return new Seen(borderline + other.borderline, missed + other.missed);
    }
  }

  @Test
  void everySampledOutcomeIsFoundAndEveryFoundOutcomeHasItsPoint() {
    Seen seen =
        LongStream.range(0, COUNT)
            .parallel()
            .mapToObj(ReachableTest::compare)
            .reduce(new Seen(0, 0), Seen::plus);
    assertTrue(seen.borderline() > COUNT / 6, "borderline cases: " + seen);
    assertTrue(seen.missed() < COUNT / 50, "outcomes that only the analysis found: " + seen);
  }

  private static Seen compare(long seed) {
    RandomAccuracies random = new RandomAccuracies(seed);
    KnowledgeBase knowledge = random.with(RandomKnowledge.of(seed));
    Situation given = random.situation(knowledge);
    Runner runner = new Runner(knowledge, RuleCompiler.compile(knowledge));
    List<OnBuild> found =
        new Reachable(knowledge, runner).of(RandomKnowledge.SYMPTOM, given).orElseThrow();
    Set<Verdict> exact = new HashSet<>();
    Set<Verdict> sampled = new HashSet<>();
    for (Build build : builds(knowledge, given)) {
      Situation here = on(build, given);
      BoxSamples samples = new BoxSamples(knowledge, given, build, seed);
      exact.add(runner.verdict(RandomKnowledge.SYMPTOM, here));
      samples.forEach(at -> sampled.add(runner.verdict(RandomKnowledge.SYMPTOM, on(build, at))));
    }
    found.forEach(on -> points(on, knowledge, seed, exact));
    Set<Verdict> unseen = new HashSet<>(sampled);
    unseen.removeAll(exact);
    assertEquals(Set.of(), unseen, () -> seed + ": " + given + " within " + knowledge.symptoms());
    return new Seen(exact.size() > 1 ? 1 : 0, exact.size() > sampled.size() ? 1 : 0);
  }

  private static void points(OnBuild on, KnowledgeBase knowledge, long seed, Set<Verdict> exact) {
    BoxSamples samples = new BoxSamples(knowledge, on.given(), on.build(), seed);
    for (Point point : on.points()) {
      assertTrue(samples.holds(point.situation()), () -> seed + ": " + point + " of " + on.given());
      exact.add(point.verdict());
    }
  }

  private static List<Build> builds(KnowledgeBase knowledge, Situation given) {
    return Candidates.having(
        given.equipment(),
        knowledge.equipment().builds().stream()
            .filter(
                build ->
                    build.satisfies(knowledge.symptoms().get(RandomKnowledge.SYMPTOM).applies()))
            .toList());
  }

  private static Situation on(Build build, Situation given) {
    SortedMap<String, String> equipment = new TreeMap<>(given.equipment());
    equipment.put(Equipment.MODEL, build.model().id());
    build.software().ifPresent(version -> equipment.put(Equipment.SOFTWARE, version.text()));
    return new Situation(equipment, given.readings());
  }
}
