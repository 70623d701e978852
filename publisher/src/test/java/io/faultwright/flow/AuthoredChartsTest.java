package io.faultwright.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.chart.ChartCourse;
import io.faultwright.analysis.order.ChartCost;
import io.faultwright.analysis.order.ChartCosts;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.analysis.space.Witness;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Chart;
import io.faultwright.model.Chart.Branch;
import io.faultwright.model.Chart.Step;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.run.Runner;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A chart that a trainer wrote is drawn as it was written, for its equipment only. */
class AuthoredChartsTest {
  private static final String RULES =
      """
      equipment:
        families: { fell: { title: Fell }, tarn: { title: Tarn }, beck: { title: Beck } }
        models: { F1: { family: fell }, T1: { family: tarn }, B1: { family: beck } }
      readings:
        lamp: { ask: "What does the lamp do?", values: [steady, blinks, off] }
        mood: { ask: "How is the caller?", values: [calm, angry] }
        pressure: { title: Pressure, ask: "Which pressure?", unit: bar(g), range: 0 to 10 }
      limits:
        pressure:
          by: [family]
          rows:
            - { family: fell, low: 1, high: 2 }
            - { family: [tarn, beck], low: 2, high: 3 }
      faults: { bulb: { title: Bulb broken }, leak: { title: Charge lost }, gauge: { title: Gauge off } }
      symptoms:
        s:
          title: It does not cool
          rules:
            dark: { when: { lamp: off }, conclude: bulb, because: b }
            low: { when: { lamp: not off, pressure: below limits }, conclude: leak, because: b }
            other: { when: { lamp: not off, pressure: not below limits }, conclude: gauge, because: b }
            blind: { when: { lamp: not off, pressure: cannot be taken }, escalate: hotline, because: b }
      """;

  private static final String CHART =
      """
      charts:
        by-hand:
          title: Gauges first
          symptom: s
          applies: { family: [fell, tarn] }
          start: caller
          steps:
            caller:
              check: mood
              answers: [ { is: calm, next: gauges }, { is: angry, next: gauges } ]
            gauges:
              check: pressure
              answers:
                - { is: cannot be taken, next: lamp-blind }
                - { is: not below limits, next: lamp }
                - { is: below limits, next: machine }
            machine:
              check: family
              answers: [ { is: fell, next: lamp-low }, { is: not fell, next: again } ]
            again:
              check: pressure
              answers:
                - { is: below limits, next: lamp-low }
                - { is: not below limits, conclude: gauge }
            lamp-low:
              check: lamp
              answers: [ { is: off, conclude: bulb }, { is: not off, conclude: leak } ]
            lamp:
              check: lamp
              answers: [ { is: off, conclude: bulb }, { is: not off, conclude: gauge } ]
            lamp-blind:
              check: lamp
              answers: [ { is: off, conclude: bulb }, { is: not off, escalate: hotline } ]
      """;

  private static List<ScopedChart> charts(String charts) {
    KnowledgeBase kb = Demos.of(RULES + charts);
    List<ScopedChart> all = ChartBuilder.charts(kb, kb.symptoms().get("s"));
    List<Build> covered = all.stream().flatMap(one -> one.builds().stream()).sorted().toList();
    assertEquals(kb.equipment().builds().stream().sorted().toList(), covered);
    return all;
  }

  private static boolean isByHand(ScopedChart chart) {
    return chart.chart().start().scope().contains("written by hand");
  }

  private static List<String> lines(Flowchart chart) {
    return chart.edges().stream()
        .map(edge -> edge.from() + " [" + edge.answer() + "] " + edge.to())
        .sorted()
        .toList();
  }

  /** The caller's mood, the machine and the second look at the gauge all lead to the same. */
  @Test
  void itIsDrawnStepByStep() {
    Flowchart chart = charts(CHART).get(0).chart();
    assertEquals("Gauges first", chart.start().title());
    assertEquals(
        List.of(
            "start [] step.gauges",
            "step.gauges [Below limits] step.lamp-low",
            "step.gauges [Cannot be taken] step.lamp-blind",
            "step.gauges [Within or above limits] step.lamp",
            "step.lamp [Off] fault.bulb",
            "step.lamp [Steady or blinks] fault.gauge",
            "step.lamp-blind [Off] fault.bulb",
            "step.lamp-blind [Steady or blinks] ask.hotline",
            "step.lamp-low [Off] fault.bulb",
            "step.lamp-low [Steady or blinks] fault.leak"),
        lines(chart));
    assertEquals(
        List.of("Below limits", "Within or above limits", "Cannot be taken"),
        chart.from("step.gauges").stream().map(Edge::answer).toList());
    Node.Check gauges = (Node.Check) chart.nodes().get("step.gauges");
    assertEquals("Which pressure?", gauges.question());
    assertEquals(
        List.of("Compare with the limits: Fell 1 to 2 bar(g); Beck or Tarn 2 to 3 bar(g)."),
        gauges.steps());
  }

  @Test
  void otherEquipmentKeepsWhatTheRulesSay() {
    List<ScopedChart> charts = charts(CHART);
    assertEquals(List.of(true, false), charts.stream().map(AuthoredChartsTest::isByHand).toList());
    assertEquals(2, charts.get(0).builds().size());
    assertTrue(charts.get(0).chart().start().scope().endsWith("; written by hand, proved"));
    assertEquals(List.of("It does not cool"), titles(charts.subList(1, 2)));
    String everywhere = CHART.replace("    applies: { family: [fell, tarn] }\n", "");
    assertEquals(List.of("Gauges first"), titles(charts(everywhere)));
  }

  private static List<String> titles(List<ScopedChart> charts) {
    return charts.stream().map(one -> one.chart().start().title()).toList();
  }

  @Test
  void oneModelAloneGetsItToo() {
    KnowledgeBase kb = Demos.of(RULES + CHART);
    Symptom symptom = kb.symptoms().get("s");
    for (Build build : kb.equipment().builds()) {
      List<ScopedChart> charts =
          ChartBuilder.charts(
              SymptomSpace.where(kb, symptom, List.of(build), List.of(), Deadline.NEVER));
      assertEquals(1, charts.size());
      assertEquals(List.of(build), charts.get(0).builds());
      assertEquals(!build.model().id().equals("B1"), isByHand(charts.get(0)));
    }
  }

  @Test
  void whatHasNoShapeIsLeftToTheRules() {
    for (String broken :
        List.of(
            CHART.replace(
                "{ is: not below limits, next: lamp }", "{ is: above limits, next: lamp }"),
            CHART.replace(
                "{ is: not below limits, next: lamp }", "{ is: not below limits, next: caller }"),
            CHART.replace(
                "{ is: not below limits, next: lamp }",
                "{ is: [below limits, within limits, above limits], next: lamp }"))) {
      assertTrue(charts(broken).stream().noneMatch(AuthoredChartsTest::isByHand), broken);
    }
  }

  /** No such chart is published but as a draft. */
  @Test
  void whatEndsElsewhereIsNotCalledProved() {
    String wrong =
        CHART.replace("{ is: not off, conclude: leak }", "{ is: not off, conclude: gauge }");
    ScopedChart chart = charts(wrong).get(0);
    assertTrue(chart.chart().start().scope().endsWith("; written by hand, not proved"));
  }

  @Test
  void ofTwoForOneMachineTheFirstIsTaken() {
    String second =
        CHART
            .replace("charts:\n", "")
            .replace("by-hand:", "by-hand-too:")
            .replace("Gauges first", "Gauges again")
            .replace("[fell, tarn]", "[tarn, beck]");
    List<ScopedChart> charts = charts(CHART + second);
    assertEquals(List.of("Gauges first", "Gauges again"), titles(charts));
    assertEquals("B1", charts.get(1).builds().get(0).model().id());
  }

  /** Every step and every answer of the demo's chart stands on what is printed. */
  @Test
  void theDemoPrintsItsChart() {
    KnowledgeBase kb = Demos.all().get(0);
    Chart written = kb.charts().get("low-discharge-pressure-by-gauges");
    List<ScopedChart> charts = ChartBuilder.charts(kb, kb.symptoms().get(written.symptom()));
    assertEquals(1, charts.size());
    Flowchart chart = charts.get(0).chart();
    assertEquals(written.title(), chart.start().title());
    assertEquals("Written by hand, proved", chart.start().scope());
    SymptomSpace space = SymptomSpace.of(kb, kb.symptoms().get(written.symptom()));
    ChartCost cost = ChartCosts.of(space, written, space.possible()).orElseThrow();
    assertEquals(cost.weighted(), charts.get(0).cost().orElseThrow().weighted(), 1e-9);
    assertEquals(cost.cheapest().atLeast(), charts.get(0).cost().orElseThrow().atLeast(), 1e-9);
    written
        .steps()
        .values()
        .forEach(
            step ->
                assertEquals(
                    step.branches().size(), chart.from("step." + step.id()).size(), step.id()));
    assertEquals(
        Stream.of("Below limits", "Within limits", "Above limits").toList(),
        chart.from("step.low-side").stream().map(Edge::answer).toList());
  }

  /** Drools judges one situation of each way through the demo's chart. */
  @Test
  void everyWayThroughTheDemosChartEndsAsDroolsSays() {
    KnowledgeBase kb = Demos.all().get(0);
    Chart written = kb.charts().get("low-discharge-pressure-by-gauges");
    Flowchart drawn = ChartBuilder.charts(kb, kb.symptoms().get(written.symptom())).get(0).chart();
    ChartCourse course = ChartCourse.of(kb, written, kb.equipment().builds()).orElseThrow();
    assertEquals(course.symptom().possible(), course.at(written.steps().get(written.start())));
    Runner runner = new Runner(kb, RuleCompiler.compile(kb));
    Step start = written.steps().get(written.start());
    int ends = follow(written, start, course.at(start), new Replayed(drawn, course, runner));
    assertEquals(13, ends);
  }

  private record Replayed(Flowchart drawn, ChartCourse course, Runner runner) {}

  private static int follow(Chart chart, Step step, int situations, Replayed by) {
    Space space = by.course.symptom().space();
    int ends = 0;
    for (Branch branch : step.branches()) {
      int part = space.diagrams().and(situations, by.course.where(branch));
      if (part != Diagrams.NONE) {
        String to =
            branch.target().next().map("step."::concat).orElseGet(() -> end(chart, part, by));
        assertEquals(
            1,
            by.drawn.from("step." + step.id()).stream().filter(e -> e.to().equals(to)).count(),
            () -> step.id() + " to " + to);
        ends +=
            branch
                .target()
                .next()
                .map(next -> follow(chart, chart.steps().get(next), part, by))
                .orElse(1);
      }
    }
    return ends;
  }

  /** The outcome that Drools names, by the id it has on a chart. */
  private static String end(Chart chart, int part, Replayed by) {
    Situation witness = new Witness(by.course.symptom().space()).of(part);
    Answer answer = by.runner.verdict(chart.symptom(), witness).answers().first();
    return (answer instanceof Answer.OfFault ? "fault." : "symptom.") + answer.name();
  }
}
