package io.faultwright.analysis.random;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.ambiguity.Prospect;
import io.faultwright.ambiguity.Prospect.Open;
import io.faultwright.ambiguity.Prospect.Step;
import io.faultwright.analysis.ambiguity.CaseProspect;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Answer;
import io.faultwright.model.Case;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Conditions;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.run.Runner;
import io.faultwright.run.Trace;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * What a partial case leaves open, against every listed point that agrees with it, and against
 * Drools: on each example, and by three-valued logic, which may leave more open and never less.
 */
class RandomProspectTest {
  private static final int COUNT = Integer.getInteger("random.prospect", 400);

  private record Shown(int open, int sharper) {
    Shown plus(Shown other) {
      return new Shown(open + other.open, sharper + other.sharper);
    }
  }

  @Test
  void whatIsOpenEqualsBruteForce() {
    Shown shown =
        LongStream.range(0, COUNT)
            .parallel()
            .mapToObj(RandomProspectTest::compare)
            .reduce(new Shown(0, 0), Shown::plus);
    assertTrue(shown.open > COUNT / 4, "with several outcomes open: " + shown);
    assertTrue(shown.sharper > COUNT / 40, "sharper than three-valued logic: " + shown);
  }

  private static Shown compare(long seed) {
    Random random = new Random(seed);
    KnowledgeBase knowledge = Priced.of(RandomKnowledge.of(seed), random);
    Symptom symptom = knowledge.symptoms().get(RandomKnowledge.SYMPTOM);
    List<Point> points = new ArrayList<>();
    new Points(knowledge, symptom)
        .forEach(point -> points.add(new Point(point.build(), Map.copyOf(point.values()))));
    if (points.isEmpty()) {
      return new Shown(0, 0);
    }
    Point given = part(points.get(random.nextInt(points.size())), random);
    boolean machine = random.nextBoolean();
    List<Point> agreeing = points.stream().filter(point -> agrees(point, given, machine)).toList();
    Situation situation = given.situation(machine);
    Prospect prospect =
        CaseProspect.of(SymptomSpace.of(knowledge, symptom), recorded(situation)).orElseThrow();
    Set<SortedSet<Answer>> open =
        prospect.open().stream().map(Open::answers).collect(Collectors.toSet());
    assertEquals(outcomes(knowledge, symptom, agreeing), open, () -> seed + " " + situation);
    checkSteps(seed, prospect);
    return confirm(seed, knowledge, situation, prospect);
  }

  /** Some of the readings of a point, where the listed points are enough for what is left. */
  private static Point part(Point point, Random random) {
    Map<String, Object> values = new TreeMap<>(point.values());
    values.remove(RandomKnowledge.DIFFERENCE);
    values.entrySet().removeIf(entry -> random.nextInt(3) == 0 || !isEnough(entry));
    return new Point(point.build(), values);
  }

  /** Limits pass whole numbers where the driver is listed; differences likewise for halves. */
  private static boolean isEnough(Map.Entry<String, Object> entry) {
    if (!(entry.getValue() instanceof Long amount) || entry.getKey().equals("driver")) {
      return true;
    }
    boolean operand = entry.getKey().equals("left") || entry.getKey().equals("right");
    return amount % (operand ? Oracle.SCALE / 2 : Oracle.SCALE) == 0;
  }

  private static boolean agrees(Point point, Point given, boolean machine) {
    return (!machine || point.build().equals(given.build()))
        && given.values().entrySet().stream()
            .allMatch(entry -> entry.getValue().equals(point.values().get(entry.getKey())));
  }

  private static Case recorded(Situation given) {
    return new Case(
        "case",
        Conditions.NOWHERE,
        RandomKnowledge.SYMPTOM,
        given,
        new TreeSet<>(),
        true,
        "",
        Optional.empty(),
        List.of());
  }

  private static Set<SortedSet<Answer>> outcomes(
      KnowledgeBase knowledge, Symptom symptom, Collection<Point> points) {
    Oracle oracle = new Oracle(knowledge, symptom);
    Set<SortedSet<Answer>> outcomes = new HashSet<>();
    for (Point point : points) {
      Oracle.Fate fate = oracle.fate(point);
      if (fate.possible()) {
        outcomes.add(
            fate.referred()
                ? new TreeSet<>(Set.of(new Answer.OfReferral("elsewhere")))
                : oracle.answers(fate));
      }
    }
    return outcomes;
  }

  private static void checkSteps(long seed, Prospect prospect) {
    assertEquals(prospect.open().size() < 2, prospect.steps().isEmpty(), () -> seed + " steps");
    for (Step step : prospect.steps()) {
      assertTrue(step.bits() > -1e-9 && step.decides() >= 0 && step.decides() <= 1 + 1e-9);
      double least = step.taking().effort().weighted().doubleValue();
      assertTrue(step.expected().orElseThrow().weighted() > least - 1e-6, () -> seed + " " + step);
    }
    double whole = prospect.open().stream().mapToDouble(Open::likelihood).sum();
    assertEquals(prospect.open().isEmpty() ? 0 : 1, whole, 1e-6);
  }

  /** A fault that some rule concludes and another excludes is a contradiction, and is told. */
  private static SortedSet<String> excluded(KnowledgeBase knowledge, String rule) {
    Conclusion conclusion =
        knowledge.symptoms().get(RandomKnowledge.SYMPTOM).rules().get(rule).conclusion();
    return conclusion instanceof Conclusion.Exclude exclude ? exclude.faults() : new TreeSet<>();
  }

  private static Shown confirm(
      long seed, KnowledgeBase knowledge, Situation given, Prospect prospect) {
    Runner runner = new Runner(knowledge, RuleCompiler.compile(knowledge));
    SortedSet<String> open = new TreeSet<>();
    for (Open one : prospect.open()) {
      assertTrue(
          one.example().readings().entrySet().containsAll(given.readings().entrySet()),
          () -> seed + " " + one);
      assertEquals(
          one.answers(),
          runner.verdict(RandomKnowledge.SYMPTOM, one.example()).answers(),
          () -> seed + " " + one);
      one.answers().forEach(answer -> open.add(answer.name()));
    }
    Trace trace = runner.run(RandomKnowledge.SYMPTOM, given);
    if (!trace.status().worked() || prospect.open().isEmpty()) {
      return new Shown(prospect.open().size() > 1 ? 1 : 0, 0);
    }
    SortedSet<String> possible = new TreeSet<>(trace.stillPossible());
    trace.answers().forEach(answer -> possible.add(answer.name()));
    trace.fired().forEach(rule -> possible.addAll(excluded(knowledge, rule)));
    open.retainAll(knowledge.faults().keySet());
    possible.retainAll(knowledge.faults().keySet());
    assertTrue(possible.containsAll(open), () -> seed + ": " + open + " not in " + possible);
    return new Shown(prospect.open().size() > 1 ? 1 : 0, possible.equals(open) ? 0 : 1);
  }
}
