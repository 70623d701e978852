package io.faultwright.report;

import io.faultwright.finding.Share;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The closing lines of a check: what was proved, how the cases went, what is to be mended. */
final class Summary {
  private final Ink ink;

  Summary(Ink ink) {
    this.ink = ink;
  }

  String of(CheckReport report) {
    return proof(report.symptoms())
        + shares(report.symptoms())
        + charts(report.charts())
        + cases(report)
        + verdict(report);
  }

  private static String proof(List<SymptomSummary> symptoms) {
    long clean = symptoms.stream().filter(SymptomSummary::clean).count();
    String proved =
        Counts.of(symptoms.size(), "symptom")
            + ": "
            + howMany(clean, symptoms.size())
            + " proved to have no gap and no contradiction\n";
    return symptoms.isEmpty() ? "" : proved + unproved(symptoms);
  }

  private static String howMany(long some, long all) {
    if (some == 0) {
      return "none";
    }
    return some == all && all > 1 ? "all" : Long.toString(some);
  }

  private static String unproved(List<SymptomSummary> symptoms) {
    return symptoms.stream()
        .filter(symptom -> symptom.proof() != SymptomSummary.Proof.EXACT)
        .map(symptom -> "  " + symptom.id() + ": " + symptom.proof().word() + "\n")
        .collect(Collectors.joining());
  }

  private static String shares(List<SymptomSummary> symptoms) {
    return symptoms.stream().map(Summary::shares).collect(Collectors.joining());
  }

  private static String shares(SymptomSummary symptom) {
    return share(symptom, symptom.unanswered(), "no rule answers %s of its situations")
        + share(symptom, symptom.contradicted(), "the answers contradict each other in %s")
        + share(symptom, symptom.escalated(), "only escalation answers %s of its situations");
  }

  private static String share(SymptomSummary symptom, Optional<Share> share, String words) {
    return share
        .filter(part -> part.high() > 0)
        .map(part -> "  " + symptom.id() + ": " + words.replace("%s", Shares.words(part)) + "\n")
        .orElse("");
  }

  private static String charts(List<ChartSummary> charts) {
    long proved = charts.stream().filter(chart -> chart.proved().orElse(false)).count();
    String late =
        charts.stream()
            .filter(chart -> chart.proved().isEmpty())
            .map(chart -> "  " + chart.id() + ": not computed\n")
            .collect(Collectors.joining());
    String effort = charts.stream().map(ChartEffortText::of).collect(Collectors.joining());
    return charts.isEmpty()
        ? ""
        : Counts.of(charts.size(), "chart")
            + ": "
            + howMany(proved, charts.size())
            + " proved to end as the rules say\n"
            + late
            + effort;
  }

  private static String cases(CheckReport report) {
    int all = report.casesPassed() + report.casesFailed();
    return all == 0
        ? "no cases\n"
        : Counts.of(all, "case")
            + ": "
            + report.casesPassed()
            + " passed, "
            + report.casesFailed()
            + " failed\n";
  }

  private String verdict(CheckReport report) {
    String text =
        Counts.of(report.errors(), "error") + ", " + Counts.of(report.warnings(), "warning");
    return (report.errors() > 0 ? ink.bad(text) : ink.good(text)) + "\n";
  }
}
