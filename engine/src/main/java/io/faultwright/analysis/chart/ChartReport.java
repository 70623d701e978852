package io.faultwright.analysis.chart;

import io.faultwright.finding.Finding;
import java.util.List;

/**
 * What was found about one authored chart.
 *
 * @param findings in no particular order
 * @param proved whether every possible situation ends at what the rules say
 */
public record ChartReport(List<Finding> findings, boolean proved) {
  public ChartReport {
    findings = List.copyOf(findings);
  }
}
