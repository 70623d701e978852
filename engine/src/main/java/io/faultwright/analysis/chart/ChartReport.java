package io.faultwright.analysis.chart;

import io.faultwright.analysis.order.ChartCost;
import io.faultwright.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What was found about one authored chart.
 *
 * @param findings in no particular order
 * @param proved whether every possible situation ends at what the rules say
 * @param cost what it costs beside the cheapest order; absent where it is not proved, or where that
 *     was too much to find out
 */
public record ChartReport(List<Finding> findings, boolean proved, Optional<ChartCost> cost) {
  public ChartReport {
    findings = List.copyOf(findings);
  }
}
