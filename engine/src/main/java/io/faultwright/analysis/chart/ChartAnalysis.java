package io.faultwright.analysis.chart;

import io.faultwright.analysis.order.ChartCost;
import io.faultwright.analysis.order.ChartCosts;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.OutOfTime;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.Severity;
import io.faultwright.model.Chart;
import io.faultwright.model.Chart.Branch;
import io.faultwright.model.Chart.End;
import io.faultwright.model.Chart.Step;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Follows every possible situation through an authored chart and compares where it ends with what
 * the rules say of it. A chart that is right is set beside the cheapest order of checks.
 */
public final class ChartAnalysis {
  private final ChartSpace space;
  private final Chart chart;
  private final Diagrams diagrams;
  private final Reach reach;
  private final ChartEvidence evidence;
  private final List<Finding> findings = new ArrayList<>();

  private ChartAnalysis(ChartSpace space) {
    this.space = space;
    this.chart = space.chart();
    this.diagrams = space.diagrams();
    this.reach = new Reach(space);
    this.evidence = new ChartEvidence(space);
  }

  /**
   * What is wrong with a chart, or the proof that nothing is, and what it then costs.
   *
   * @param deadline after which it throws {@link io.faultwright.analysis.space.OutOfTime}
   */
  public static ChartReport of(KnowledgeBase knowledge, Chart chart, Deadline deadline) {
    ChartSpace space = new ChartSpace(knowledge, chart, deadline);
    ChartReport proof = proof(space);
    return new ChartReport(
        proof.findings(), proof.proved(), proof.proved() ? cost(space) : Optional.empty());
  }

  /** The same without the cost. */
  static ChartReport proof(ChartSpace space) {
    List<Finding> findings = new ChartAnalysis(space).findings();
    boolean sound = findings.stream().noneMatch(one -> one.kind().severity() == Severity.ERROR);
    return new ChartReport(findings, sound && space.isWhole(), Optional.empty());
  }

  /** The proof stands, even where there is no time left for the cost. */
  private static Optional<ChartCost> cost(ChartSpace space) {
    try {
      return ChartCosts.of(space.symptom(), space.chart(), space.start());
    } catch (OutOfTime late) {
      return Optional.empty();
    }
  }

  private List<Finding> findings() {
    RuleOutcomes outcomes = new RuleOutcomes(space.symptom());
    for (Step step : chart.steps().values()) {
      step.branches().forEach(branch -> differences(step, branch, outcomes));
      missing(step);
      overlaps(step);
      unreached(step);
    }
    new Circles(space, reach).all().forEach(this::circle);
    return findings;
  }

  private void differences(Step step, Branch branch, RuleOutcomes outcomes) {
    if (branch.target() instanceof End end) {
      int wrong = diagrams.minus(reach.along(step, branch), outcomes.exactly(end.answers()));
      if (wrong != Diagrams.NONE) {
        outcomes
            .divided(wrong)
            .ifPresentOrElse(
                parts -> parts.forEach(part -> difference(step, branch, end, part)),
                () -> difference(step, branch, end, wrong, "say something else"));
      }
    }
  }

  private void difference(Step step, Branch branch, End end, RuleOutcomes.Part part) {
    String rules = part.answers().isEmpty() ? "say nothing" : "say " + EndWords.all(part.answers());
    difference(step, branch, end, part.situations(), rules);
  }

  private void difference(Step step, Branch branch, End end, int situations, String rules) {
    Finding finding = difference(step, branch, end, rules);
    findings.addAll(evidence.boxes(finding, situations));
  }

  private Finding difference(Step step, Branch branch, End end, String rules) {
    return finding(
        FindingKind.CHART_DIFFERS,
        List.of(branch.place()),
        name(step) + " ends with " + EndWords.all(end.answers()) + " where the rules " + rules,
        "correct this answer, ask more before it, or correct the rules");
  }

  private void missing(Step step) {
    int stuck = reach.stuck(step);
    Finding finding =
        finding(
            FindingKind.CHART_ANSWER_MISSING,
            List.of(step.place()),
            name(step) + " has no answer for what comes to it",
            "add an answer for these values of `" + step.check() + "`, or widen one");
    findings.addAll(evidence.boxes(finding, stuck));
  }

  private void overlaps(Step step) {
    for (int i = 0; i < step.branches().size(); i++) {
      for (int j = i + 1; j < step.branches().size(); j++) {
        overlap(step, step.branches().get(i), step.branches().get(j));
      }
    }
  }

  private void overlap(Step step, Branch one, Branch other) {
    int both = diagrams.and(reach.along(step, one), space.where(other));
    if (both != Diagrams.NONE && !one.target().equals(other.target())) {
      Finding finding =
          finding(
              FindingKind.CHART_ANSWERS_OVERLAP,
              List.of(one.place(), other.place()),
              name(step)
                  + " has two answers for one value, "
                  + EndWords.target(one.target())
                  + " and "
                  + EndWords.target(other.target()),
              "give every value of `" + step.check() + "` to one of the two");
      findings.add(evidence.largest(finding, both));
    }
  }

  private void unreached(Step step) {
    if (reach.at(step.id()) == Diagrams.NONE) {
      findings.add(
          finding(
              FindingKind.CHART_STEP_UNREACHED,
              List.of(step.place()),
              isNamed(step)
                  ? "no possible situation comes to " + name(step)
                  : "no answer leads to " + name(step),
              isNamed(step)
                  ? "take the step out, or let the answers before it leave something to ask"
                  : "take the step out, or let an answer lead to it"));
    }
  }

  private boolean isNamed(Step step) {
    return step.id().equals(chart.start())
        || chart.steps().values().stream()
            .flatMap(other -> other.branches().stream())
            .anyMatch(branch -> branch.target().next().filter(step.id()::equals).isPresent());
  }

  private void circle(Circles.Circle circle) {
    List<Place> places = circle.steps().stream().map(Step::place).toList();
    String path =
        circle.steps().stream()
            .map(step -> "`" + step.id() + "` → ")
            .collect(Collectors.joining("", "", "`" + circle.steps().get(0).id() + "`"));
    Finding finding =
        finding(
            FindingKind.CHART_LOOP,
            places,
            "the chart `" + chart.id() + "` leads back: " + path,
            "let one of these steps end, or lead to a step that was not done before");
    findings.add(
        circle.situations() == Diagrams.NONE
            ? finding
            : evidence.largest(finding, circle.situations()));
  }

  private String name(Step step) {
    return "step `" + step.id() + "` of the chart `" + chart.id() + "`";
  }

  private Finding finding(FindingKind kind, List<Place> places, String message, String help) {
    return Finding.of(kind, places, message, help)
        .in(chart.symptom(), List.of())
        .onChart(chart.id());
  }
}
