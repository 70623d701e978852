package io.faultwright.pipeline;

import io.faultwright.analysis.Analyses;
import io.faultwright.analysis.chart.ChartReport;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.OutOfTime;
import io.faultwright.finding.Finding;
import io.faultwright.model.Chart;
import io.faultwright.model.KnowledgeBase;
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
      return new ChartCheck(report.findings(), summary(chart, Optional.of(report.proved())));
    } catch (OutOfTime late) {
      return notComputed(chart);
    }
  }

  /** Time ran out before anything was known. */
  static ChartCheck notComputed(Chart chart) {
    return new ChartCheck(List.of(), summary(chart, Optional.empty()));
  }

  private static ChartSummary summary(Chart chart, Optional<Boolean> proved) {
    return new ChartSummary(chart.id(), chart.symptom(), proved);
  }
}
