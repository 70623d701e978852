package io.faultwright.report;

import io.faultwright.finding.Finding;
import io.faultwright.finding.Severity;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Everything a check has to say, before it is printed.
 *
 * @param handbook title of the handbook
 * @param findings errors first
 * @param symptoms what was proved, by id
 * @param charts what was proved about authored charts, by id
 * @param casesPassed how many cases came out as expected
 * @param casesFailed how many did not
 */
public record CheckReport(
    String handbook,
    List<Finding> findings,
    List<SymptomSummary> symptoms,
    List<ChartSummary> charts,
    int casesPassed,
    int casesFailed) {
  public CheckReport {
    findings = findings.stream().sorted(Finding.ORDER).toList();
    symptoms = symptoms.stream().sorted(Comparator.comparing(SymptomSummary::id)).toList();
    charts = charts.stream().sorted(Comparator.comparing(ChartSummary::id)).toList();
  }

  /** The same with further findings. */
  public CheckReport with(List<Finding> further) {
    List<Finding> all = Stream.concat(findings.stream(), further.stream()).toList();
    return new CheckReport(handbook, all, symptoms, charts, casesPassed, casesFailed);
  }

  public long errors() {
    return count(Severity.ERROR);
  }

  public long warnings() {
    return count(Severity.WARNING);
  }

  /** Whether every symptom and every chart was looked at to the end. */
  public boolean complete() {
    return symptoms.stream().allMatch(symptom -> symptom.proof() == SymptomSummary.Proof.EXACT)
        && charts.stream().allMatch(chart -> chart.proved().isPresent());
  }

  private long count(Severity severity) {
    return findings.stream().filter(finding -> finding.kind().severity() == severity).count();
  }
}
