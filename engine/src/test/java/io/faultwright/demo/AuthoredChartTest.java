package io.faultwright.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.chart.ChartAnalysis;
import io.faultwright.analysis.order.ScopedOrder;
import io.faultwright.analysis.order.ScopedOrders;
import io.faultwright.analysis.outcome.Result;
import io.faultwright.analysis.outcome.Results;
import io.faultwright.analysis.outcome.Separation;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.RegionTest;
import io.faultwright.model.Answer;
import io.faultwright.model.Chart;
import io.faultwright.model.Chart.Branch;
import io.faultwright.model.Chart.End;
import io.faultwright.model.Chart.Step;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import io.faultwright.model.Value;
import io.faultwright.pipeline.Pipeline;
import io.faultwright.pipeline.Scope;
import io.faultwright.pipeline.Watch;
import io.faultwright.quantity.Decimals;
import io.faultwright.report.ChartEffort;
import io.faultwright.report.ChartEffort.Hazard;
import io.faultwright.report.ChartSummary;
import io.faultwright.report.CheckReport;
import io.faultwright.resolve.Resolver;
import io.faultwright.run.Runner;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** The chart of the demo that was written by hand is right; every mistake put into it is found. */
class AuthoredChartTest {
  private static final String SYMPTOM = "low-discharge-pressure";
  private static final String CHART = "low-discharge-pressure-by-gauges";
  private static final String FILE = "charts/low-discharge-pressure.yaml";
  private static final Sources DEMO = FolderReader.read(Path.of("..", "rules", "walk-in-freezers"));
  private static final KnowledgeBase FREEZERS = Resolver.resolve(DEMO);

  private static CheckReport check(Sources sources) {
    Scope scope = new Scope(Optional.of(SYMPTOM), Optional.empty());
    return new Pipeline(scope, Watch.NOBODY).check(sources).report();
  }

  private static Sources planted(String right, String wrong) {
    return planted(FILE, right, wrong);
  }

  private static Sources planted(String path, String right, String wrong) {
    List<SourceFile> files = new ArrayList<>();
    for (SourceFile file : DEMO.files()) {
      boolean here = file.path().equals(path);
      assertTrue(!here || file.text().contains(right), right);
      files.add(here ? SourceFile.of(path, file.text().replace(right, wrong)) : file);
    }
    return new Sources(files);
  }

  private static List<Finding> about(FindingKind kind, CheckReport report) {
    return report.findings().stream().filter(finding -> finding.kind() == kind).toList();
  }

  @Test
  void itIsProved() {
    CheckReport report = check(DEMO);
    ChartSummary chart = report.charts().get(0);
    assertEquals(1, report.charts().size());
    assertEquals(new ChartSummary(CHART, SYMPTOM, Optional.of(true), chart.effort()), chart);
    assertTrue(report.findings().stream().noneMatch(finding -> finding.chart().isPresent()));
  }

  /**
   * By hand: the gauges first are less effort than the glass and the fans first, as the symptom
   * wants it. Where it does not, the chart is no cheaper than the cheapest order.
   */
  @Test
  void itsEffortStandsBesideTheCheapestOrder() {
    ChartEffort effort = check(DEMO).charts().get(0).effort().orElseThrow();
    assertTrue(effort.exact());
    assertTrue(effort.difference() < 0);
    assertEquals(
        Optional.of(new Hazard("high-side", "discharge-pressure", "sight-glass")), effort.hazard());
    assertTrue(effort.cheapest().effort() <= printed() + 1e-9, () -> "printed " + printed());
    String file = "symptoms/low-discharge-pressure.yaml";
    String first = "    first:\n";
    Sources anywhere = planted(file, first, "    hazardous-checks: anywhere\n" + first);
    ChartEffort free = check(anywhere).charts().get(0).effort().orElseThrow();
    assertEquals(effort.chart(), free.chart());
    assertTrue(free.difference() >= 0 && free.difference() < effort.chart().effort());
    assertEquals(Optional.empty(), free.hazard());
    assertEquals(free.difference() > 0, free.detour().isPresent());
  }

  /** Effort of the charts that are made of the rules, over all machines. */
  private static double printed() {
    SymptomSpace space = SymptomSpace.of(FREEZERS, FREEZERS.symptoms().get(SYMPTOM));
    List<Result> results = Results.of(space);
    Separation separation = new Separation(space.space());
    double effort = 0;
    for (ScopedOrder one : ScopedOrders.of(space)) {
      double share =
          separation.likelihood(one.situations(), results)
              / separation.likelihood(space.possible(), results);
      effort += share * one.checks().orElseThrow().cost().weighted();
    }
    return effort;
  }

  /** The rules part at 10 °C, the planted chart at 5 °C: what lies between goes wrong. */
  @Test
  void aThresholdThatMovedIsShownByASituationBetween() {
    CheckReport report =
        check(
            planted(
                """
                          - { is: at least 10 °C, conclude: compressor-valves-worn }
                          - { is: below 10 °C, next: head-pressure-control }
                """,
                """
                          - { is: at least 5 °C, conclude: compressor-valves-worn }
                          - { is: below 5 °C, next: head-pressure-control }
                """));
    List<Finding> found = about(FindingKind.CHART_DIFFERS, report);
    assertFalse(found.isEmpty());
    for (Finding finding : found) {
      Situation witness = finding.witness().orElseThrow();
      BigFraction air = ((Value.Number) witness.readings().get("ambient-temperature")).amount();
      assertTrue(air.compareTo(Decimals.parse("5")) >= 0, () -> finding.toString());
      assertTrue(air.compareTo(Decimals.parse("10")) < 0, () -> finding.toString());
      assertTrue(finding.replayed());
      assertEquals(FILE, finding.places().get(0).file());
      assertTrue(
          finding
              .region()
              .contains(new RegionTest("ambient-temperature", "at least 5 °C and below 10 °C")),
          () -> finding.toString());
    }
    assertEquals(Optional.of(false), report.charts().get(0).proved());
  }

  @Test
  void aMachineWithoutAGlassStandsBeforeADeadEnd() {
    CheckReport report =
        check(planted("          - { is: cannot be taken, conclude: charge-low }\n", ""));
    Finding found = about(FindingKind.CHART_ANSWER_MISSING, report).get(0);
    Situation witness = found.witness().orElseThrow();
    assertEquals(new Value.NotTaken(), witness.readings().get("sight-glass"));
    assertTrue(witness.equipment().get("model").startsWith("FL-"), witness.toString());
    assertTrue(found.replayed());
  }

  @Test
  void everyWrongEndAndEveryMissingAnswerIsFound() {
    Runner runner = new Runner(FREEZERS, RuleCompiler.compile(FREEZERS));
    Chart chart = FREEZERS.charts().get(CHART);
    int ends = 0;
    for (Step step : chart.steps().values()) {
      for (int at = 0; at < step.branches().size(); at++) {
        Branch branch = step.branches().get(at);
        List<Finding> stuck = found(without(chart, step, at), FindingKind.CHART_ANSWER_MISSING);
        assertEquals(step.place(), stuck.get(0).places().get(0));
        if (branch.target() instanceof End) {
          SortedSet<Answer> wrong = Sorted.set(List.of(new Answer.OfFault("air-in-circuit")));
          Chart planted = with(chart, step, at, wrong);
          Finding finding = found(planted, FindingKind.CHART_DIFFERS).get(0);
          assertEquals(branch.place(), finding.places().get(0));
          Situation witness = finding.witness().orElseThrow();
          assertNotEquals(new TreeSet<>(), runner.verdict(SYMPTOM, witness).answers());
          assertNotEquals(wrong, runner.verdict(SYMPTOM, witness).answers());
          ends++;
        }
      }
    }
    assertEquals(13, ends);
  }

  private static List<Finding> found(Chart planted, FindingKind kind) {
    return ChartAnalysis.of(FREEZERS.with(planted), planted, Deadline.NEVER).findings().stream()
        .filter(finding -> finding.kind() == kind)
        .toList();
  }

  private static Chart without(Chart chart, Step step, int at) {
    List<Branch> branches = new ArrayList<>(step.branches());
    branches.remove(at);
    return with(chart, step, branches);
  }

  private static Chart with(Chart chart, Step step, int at, SortedSet<Answer> end) {
    List<Branch> branches = new ArrayList<>(step.branches());
    Branch branch = branches.get(at);
    branches.set(at, new Branch(branch.place(), branch.when(), new End(end)));
    return with(chart, step, branches);
  }

  private static Chart with(Chart chart, Step step, List<Branch> branches) {
    TreeMap<String, Step> steps = new TreeMap<>(chart.steps());
    steps.put(step.id(), new Step(step.id(), step.place(), step.check(), branches));
    return chart.with(steps);
  }
}
