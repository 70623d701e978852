package io.faultwright.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.adequacy.Criterion;
import io.faultwright.adequacy.GoalStatus;
import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.analysis.judge.Judge;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Cases along a chart. */
class ChartWalkTest {
  private static final String RULES =
      """
      equipment:
        families: { fell: { title: Fell }, tarn: { title: Tarn } }
        models: { F1: { title: Fell 1, family: fell, options: {} },
                  T1: { title: Tarn 1, family: tarn, options: {} } }
      readings:
        lamp: { ask: "What does the lamp do?", values: { steady: Steady, blinks: Blinks, off: Off } }
        pressure: { ask: "What is the pressure?", unit: bar(g), range: 0 to 10, minutes: 5,
                    applies: { family: fell } }
      limits:
        pressure: { rows: [ { low: 1, high: 2 } ] }
      faults: { bulb: { title: Bulb }, fuse: { title: Fuse }, leak: { title: Leak } }
      symptoms:
        s:
          title: It blinks
          rules:
            a: { when: { lamp: steady }, conclude: bulb, because: b }
            b: { when: { lamp: not steady, family: tarn }, conclude: fuse, because: b }
            c: { when: { lamp: not steady, pressure: below limits }, conclude: leak, because: b }
            d: { when: { lamp: not steady, pressure: not below limits }, conclude: fuse, because: b }
      cases:
      """;

  private static List<GoalStatus> goals(String... cases) {
    String all =
        cases.length == 0
            ? "  none: { symptom: s, given: { lamp: off }, expect: nothing yet }\n"
            : String.join("", cases);
    KnowledgeBase kb = Demos.of(RULES + all);
    Symptom symptom = kb.symptoms().get("s");
    Judge judge = new Judge(kb);
    List<Sighting> sightings =
        cases.length == 0
            ? List.of()
            : kb.cases().values().stream()
                .map(one -> Sighting.of(judge, symptom, one.given()))
                .toList();
    return ChartWalk.goals(kb, symptom, sightings, Deadline.NEVER);
  }

  private static String of(String id, String given) {
    return "  " + id + ": { symptom: s, given: { " + given + " }, expect: nothing yet }\n";
  }

  private static List<String> shown(List<GoalStatus> goals) {
    return goals.stream().filter(GoalStatus::shown).map(goal -> goal.goal().words()).toList();
  }

  @Test
  void everyAnswerOfTheChartIsAGoal() {
    List<GoalStatus> goals = goals();
    assertTrue(goals.stream().allMatch(goal -> goal.goal().criterion() == Criterion.CHART));
    assertEquals(
        List.of(
            "`What does the lamp do?` answered `Steady`",
            "`What does the lamp do?` answered `Blinks or off`"),
        goals.stream().map(goal -> goal.goal().words()).limit(2).toList());
    assertEquals(List.of(), shown(goals));
  }

  @Test
  void caseGoesAsFarAsItSaysEnough() {
    assertEquals(
        List.of("`What does the lamp do?` answered `Blinks or off`"),
        shown(goals(of("a", "lamp: blinks"))));
    List<String> further = shown(goals(of("a", "model: F1, lamp: off, pressure: 3 bar(g)")));
    assertTrue(further.get(further.size() - 1).startsWith("`What is the pressure?`"), further + "");
    assertTrue(further.size() > 1, further.toString());
  }

  @Test
  void answersCountForTheMachinesTheyAreGivenOn() {
    GoalStatus lamp = goals(of("a", "model: F1, lamp: blinks")).get(1);
    assertEquals("[F1, T1]", lamp.possible().toString());
    assertEquals("[F1]", lamp.shownOn().toString());
  }

  /** Every line of the charts that is drawn is a goal, and the other way round. */
  @Test
  void demosHaveAGoalForEveryLineOfTheirCharts() {
    for (KnowledgeBase kb : Demos.all()) {
      Symptom symptom = kb.symptoms().values().iterator().next();
      Map<String, Long> drawn =
          ChartBuilder.charts(kb, symptom).stream()
              .map(ScopedChart::chart)
              .flatMap(ChartWalkTest::answers)
              .collect(Collectors.groupingBy(words -> words, HashMap::new, Collectors.counting()));
      Map<String, Long> goals =
          ChartWalk.goals(kb, symptom, List.of(), Deadline.NEVER).stream()
              .map(goal -> goal.goal().words().replaceFirst(", (where|on) the chart.*", ""))
              .collect(Collectors.groupingBy(words -> words, HashMap::new, Collectors.counting()));
      assertEquals(drawn, goals, symptom.id());
    }
  }

  private static Stream<String> answers(Flowchart chart) {
    return chart.edges().stream()
        .filter(edge -> !edge.answer().isEmpty())
        .map(edge -> answered(chart, edge));
  }

  private static String answered(Flowchart chart, Edge edge) {
    String question = ((Node.Check) chart.nodes().get(edge.from())).question();
    return "`" + question + "` answered `" + edge.answer() + "`";
  }
}
