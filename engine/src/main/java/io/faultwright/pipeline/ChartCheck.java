package io.faultwright.pipeline;

import io.faultwright.analysis.Analyses;
import io.faultwright.analysis.chart.ChartReport;
import io.faultwright.analysis.order.ChartCost;
import io.faultwright.analysis.order.OrderCost;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.OutOfTime;
import io.faultwright.finding.Finding;
import io.faultwright.model.Chart;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.report.ChartEffort;
import io.faultwright.report.ChartSummary;
import java.util.List;
import java.util.Optional;

/**
 * What the analyses say about one authored chart.
 *
 * @param findings what they found
 * @param summary what they proved
 */
record ChartCheck(List<Finding> findings, ChartSummary summary) {
  static ChartCheck of(KnowledgeBase kb, Chart chart, Deadline deadline) {
    try {
      ChartReport report = Analyses.of(kb, chart, deadline);
      Optional<ChartEffort> effort = report.cost().map(ChartCheck::effort);
      return new ChartCheck(
          report.findings(), summary(chart, Optional.of(report.proved()), effort));
    } catch (OutOfTime late) {
      return notComputed(chart);
    }
  }

  /** Time ran out before anything was known. */
  static ChartCheck notComputed(Chart chart) {
    return new ChartCheck(List.of(), summary(chart, Optional.empty(), Optional.empty()));
  }

  private static ChartSummary summary(
      Chart chart, Optional<Boolean> proved, Optional<ChartEffort> effort) {
    return new ChartSummary(chart.id(), chart.symptom(), proved, effort);
  }

  private static ChartEffort effort(ChartCost cost) {
    OrderCost cheapest = cost.cheapest();
    return new ChartEffort(
        new ChartEffort.Average(cost.minutes(), cost.weighted()),
        new ChartEffort.Average(cheapest.minutes(), cheapest.weighted()),
        cheapest.gap() == 0 ? cheapest.weighted() : cheapest.atLeast(),
        cost.difference(),
        cost.detour()
            .map(
                at ->
                    new ChartEffort.Detour(
                        at.step(), at.check(), at.better(), at.later(), at.weighted())),
        cost.hazard().map(at -> new ChartEffort.Hazard(at.step(), at.check(), at.before())));
  }
}
