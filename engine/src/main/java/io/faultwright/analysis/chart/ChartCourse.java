package io.faultwright.analysis.chart;

import io.faultwright.analysis.space.Cell;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Build;
import io.faultwright.model.Chart;
import io.faultwright.model.Chart.Branch;
import io.faultwright.model.Chart.Step;
import io.faultwright.model.KnowledgeBase;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which situations come to each step of an authored chart on some equipment, to be drawn. */
public final class ChartCourse {
  /** With one of these there is no single way for every situation, and no drawing. */
  private static final Set<FindingKind> SHAPELESS =
      EnumSet.of(
          FindingKind.CHART_LOOP,
          FindingKind.CHART_ANSWER_MISSING,
          FindingKind.CHART_ANSWERS_OVERLAP);

  private final ChartSpace space;
  private final Reach reach;
  private final ChartReport report;

  private ChartCourse(ChartSpace space, ChartReport report) {
    this.space = space;
    this.reach = new Reach(space);
    this.report = report;
  }

  /**
   * The course of a chart.
   *
   * @param builds some of the equipment it is for, at least one
   * @return empty where it leads back, where an answer is missing or two fit, and where nothing can
   *     happen on the equipment
   */
  public static Optional<ChartCourse> of(KnowledgeBase kb, Chart chart, List<Build> builds) {
    ChartReport report = ChartAnalysis.proof(new ChartSpace(kb, chart, Deadline.NEVER));
    return Optional.of(report)
        .filter(
            found -> found.findings().stream().map(Finding::kind).noneMatch(SHAPELESS::contains))
        .map(found -> new ChartCourse(ChartSpace.on(builds, kb, chart), found))
        .filter(course -> course.space.start() != Diagrams.NONE);
  }

  /** Whether the chart is proved to end as the rules say. */
  public boolean proved() {
    return report.proved();
  }

  public SymptomSpace symptom() {
    return space.symptom();
  }

  /** The equipment on which something can happen. */
  public List<Build> builds() {
    return space.diagrams().occurring(space.start())[0].stream()
        .mapToObj(space.space().axes().get(0).cells()::get)
        .flatMap(cell -> ((Cell.Builds) cell).builds().stream())
        .sorted()
        .toList();
  }

  /** The situations that come to a step. */
  public int at(Step step) {
    return reach.at(step.id());
  }

  /** Where an answer holds, whether or not anything comes to its step. */
  public int where(Branch branch) {
    return space.where(branch);
  }
}
