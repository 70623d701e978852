package io.faultwright.analysis.random;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.quiz.DroolsJudge;
import io.faultwright.analysis.quiz.QuizMaker;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Answer;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.QuizPlan;
import io.faultwright.model.Session;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import io.faultwright.quiz.Choice.Outcome;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Stem;
import io.faultwright.run.Runner;
import io.faultwright.run.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The proof of items against brute force over seeded random knowledge bases: every reading that is
 * not shown takes every value that can matter, and Drools says what is told. {@code
 * -Drandom.quiz=1000} tries more of them.
 */
class RandomQuizTest {
  private static final int COUNT = Integer.getInteger("random.quiz", 8);
  private static final int MOST_POINTS = 300;

  @Test
  void noSituationThatAgreesIsToldAnythingElse() {
    int[] items =
        IntStream.range(0, COUNT)
            .parallel()
            .mapToObj(RandomQuizTest::compare)
            .reduce(new int[2], (a, b) -> new int[] {a[0] + b[0], a[1] + b[1]});
    assertTrue(items[0] > COUNT / 2, "items that ask what is told: " + items[0]);
    assertTrue(items[1] > COUNT / 2, "other items: " + items[1]);
  }

  private static int[] compare(int seed) {
    KnowledgeBase kb = RandomKnowledge.of(seed);
    Symptom symptom = kb.symptoms().get(RandomKnowledge.SYMPTOM);
    List<Item> items = new QuizMaker(kb, session(symptom)).all(seed);
    DroolsJudge judge = new DroolsJudge(kb);
    items.forEach(judge::confirm);
    List<Point> points = points(kb, symptom);
    Runner runner = new Runner(kb, RuleCompiler.compile(kb));
    int told = 0;
    for (Item item : items) {
      if (item.stem() instanceof Stem.WhichFault || item.stem() instanceof Stem.FirstFails) {
        told++;
        confirm(seed, item, points, runner);
      }
    }
    return new int[] {told, items.size() - told};
  }

  private static Session session(Symptom symptom) {
    QuizPlan plan =
        new QuizPlan(symptom.place(), 1, 70, List.of(), new TreeMap<>(), new TreeMap<>());
    return new Session(
        "session",
        symptom.place(),
        "Session",
        "",
        Optional.empty(),
        Optional.empty(),
        List.of(symptom.id()),
        Sorted.set(Set.of()),
        List.of(),
        List.of(),
        List.of(),
        Optional.of(plan));
  }

  private static List<Point> points(KnowledgeBase kb, Symptom symptom) {
    List<Point> points = new ArrayList<>();
    new Points(kb, symptom)
        .forEach(point -> points.add(new Point(point.build(), new TreeMap<>(point.values()))));
    int stride = Math.max(1, points.size() / MOST_POINTS);
    return IntStream.range(0, points.size())
        .filter(i -> i % stride == 0)
        .mapToObj(points::get)
        .toList();
  }

  private static void confirm(int seed, Item item, List<Point> points, Runner runner) {
    Situation shown = item.stem().shown().orElseThrow().situation();
    Answer right = ((Outcome) item.choices().get(item.right()).content()).answer();
    for (Point point : points) {
      if (point.build().facts().equals(shown.equipment())) {
        Situation whole = overlaid(point.situation(true), shown);
        Verdict verdict = runner.verdict(RandomKnowledge.SYMPTOM, whole);
        if (DroolsJudge.isPossible(verdict)) {
          assertEquals(Set.of(right), verdict.answers(), () -> seed + ": " + item + " in " + whole);
        }
      }
    }
  }

  private static Situation overlaid(Situation whole, Situation shown) {
    SortedMap<String, Value> readings = new TreeMap<>(whole.readings());
    readings.putAll(shown.readings());
    return new Situation(whole.equipment(), readings);
  }
}
