package io.faultwright.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.chart.ChartAnalysis;
import io.faultwright.analysis.space.Deadline;
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
    List<SourceFile> files = new ArrayList<>();
    for (SourceFile file : DEMO.files()) {
      boolean here = file.path().equals(FILE);
      assertTrue(!here || file.text().contains(right), right);
      files.add(here ? SourceFile.of(FILE, file.text().replace(right, wrong)) : file);
    }
    return new Sources(files);
  }

  private static List<Finding> about(FindingKind kind, CheckReport report) {
    return report.findings().stream().filter(finding -> finding.kind() == kind).toList();
  }

  @Test
  void itIsProved() {
    CheckReport report = check(DEMO);
    assertEquals(List.of(new ChartSummary(CHART, SYMPTOM, Optional.of(true))), report.charts());
    assertTrue(report.findings().stream().noneMatch(finding -> finding.chart().isPresent()));
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
