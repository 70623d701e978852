package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.diagnostic.Problem;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.KnowledgeBase;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A check's report in the Static Analysis Results Interchange Format, SARIF 2.1.0 (OASIS Standard,
 * 2020, with its errata of 2023), which forges show beside the lines it speaks of.
 *
 * <p>A result's {@code properties} are the finding as {@link CheckJson} writes it.
 */
public final class CheckSarif {
  private final SarifLog log;

  public CheckSarif(Surroundings around) {
    this.log = new SarifLog(around);
  }

  /** A check that came to its end; what could not be proved in time is a notification. */
  public String write(KnowledgeBase kb, CheckReport report) {
    List<FindingKind> kinds =
        report.findings().stream().map(Finding::kind).distinct().sorted().toList();
    return log.write(
        json -> {
          for (FindingKind kind : kinds) {
            log.rule(json, kind);
          }
        },
        json -> {
          CheckJson findings = new CheckJson(kb);
          for (Finding finding : report.findings()) {
            result(json, finding, kinds.indexOf(finding.kind()), findings);
          }
        },
        unproved(report),
        true);
  }

  /** What keeps a knowledge base from being read. */
  public String write(List<Problem> problems) {
    return log.write(
        log::ruleOfProblems,
        json -> {
          for (Problem problem : problems) {
            result(json, problem);
          }
        },
        List.of(),
        false);
  }

  private void result(JsonGenerator json, Finding finding, int rule, CheckJson findings)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("ruleId", finding.kind().slug());
    json.writeNumberField("ruleIndex", rule);
    json.writeStringField("level", Ink.word(finding.kind().severity()));
    log.message(json, text(finding, findings));
    log.locations(json, finding.places());
    json.writeObjectFieldStart("properties");
    findings.fields(json, finding);
    json.writeEndObject();
    json.writeEndObject();
  }

  /** A summary first, since some viewers show no more. */
  private static String text(Finding finding, CheckJson findings) {
    List<String> lines = new ArrayList<>(List.of(finding.message()));
    finding
        .witness()
        .ifPresent(
            witness -> lines.add("For example: " + String.join("; ", findings.lines(witness))));
    if (!finding.help().isEmpty()) {
      lines.add("Help: " + finding.help());
    }
    return String.join("\n\n", lines);
  }

  private void result(JsonGenerator json, Problem problem) throws IOException {
    json.writeStartObject();
    json.writeStringField("ruleId", SarifLog.UNREADABLE);
    json.writeNumberField("ruleIndex", 0);
    json.writeStringField("level", "error");
    String help = problem.help().isEmpty() ? "" : "\n\nHelp: " + problem.help();
    log.message(json, problem.message() + help);
    log.locations(json, problem.places());
    json.writeEndObject();
  }

  private static List<String> unproved(CheckReport report) {
    Stream<String> symptoms =
        report.symptoms().stream()
            .filter(symptom -> symptom.proof() != SymptomSummary.Proof.EXACT)
            .map(symptom -> "`" + symptom.id() + "`: proof " + symptom.proof().word());
    Stream<String> charts =
        report.charts().stream()
            .filter(chart -> chart.proved().isEmpty())
            .map(chart -> "chart `" + chart.id() + "`: not computed");
    return Stream.concat(symptoms, charts).toList();
  }
}
