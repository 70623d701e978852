package io.faultwright.analysis.coverage;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Answer;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Finds cases that the rules answer differently or that nobody has confirmed, and rules that no
 * case fires.
 */
public final class CaseAnalysis {
  private CaseAnalysis() {}

  public static List<Finding> findings(KnowledgeBase knowledge, List<CaseRecord> records) {
    List<Finding> findings = new ArrayList<>();
    List<CaseRecord> confirmed =
        records.stream().filter(record -> record.recorded().confirmed()).toList();
    confirmed.stream()
        .filter(record -> !record.passed())
        .map(CaseAnalysis::failed)
        .forEach(findings::add);
    records.stream()
        .filter(record -> !record.recorded().confirmed())
        .map(CaseAnalysis::unconfirmed)
        .forEach(findings::add);
    Set<String> fired = new TreeSet<>();
    confirmed.forEach(
        record ->
            record.fired().forEach(rule -> fired.add(record.recorded().symptom() + " " + rule)));
    for (Symptom symptom : knowledge.symptoms().values()) {
      symptom.rules().values().stream()
          .filter(rule -> !fired.contains(symptom.id() + " " + rule.id()))
          .map(rule -> untested(symptom, rule))
          .forEach(findings::add);
    }
    return findings;
  }

  private static Finding failed(CaseRecord record) {
    Finding finding =
        Finding.of(
            FindingKind.CASE_FAILED,
            record.recorded().place(),
            "case `"
                + record.recorded().id()
                + "` expects "
                + words(record.recorded().expect())
                + ", the rules say "
                + record.outcome(),
            "mend the rule or the case; `faultwright run KB "
                + record.recorded().id()
                + " --explain` shows why");
    return finding
        .in(record.recorded().symptom(), List.copyOf(record.fired()))
        .shownBy(record.recorded().given(), List.of(), Optional.empty());
  }

  private static Finding unconfirmed(CaseRecord record) {
    String said = words(record.recorded().expect());
    String now = record.passed() ? "" : ", and now say " + record.outcome();
    return Finding.of(
            FindingKind.CASE_UNCONFIRMED,
            record.recorded().place(),
            "nobody has confirmed case `"
                + record.recorded().id()
                + "`; the rules said "
                + said
                + now,
            "say in `expect` what is really right, and take `rules-say` out")
        .in(record.recorded().symptom(), List.copyOf(record.fired()));
  }

  /** Answers in words, for messages. */
  public static String words(Collection<Answer> answers) {
    return answers.isEmpty()
        ? "`nothing yet`"
        : answers.stream().map(CaseAnalysis::word).collect(Collectors.joining(" and "));
  }

  private static String word(Answer answer) {
    if (answer instanceof Answer.OfReferral) {
      return "`refer: " + answer.name() + "`";
    }
    return answer instanceof Answer.OfEscalation
        ? "`escalate: " + answer.name() + "`"
        : "`" + answer.name() + "`";
  }

  private static Finding untested(Symptom symptom, Rule rule) {
    return Finding.of(
            FindingKind.RULE_UNTESTED,
            rule.place(),
            "no case fires rule `" + rule.id() + "`",
            "record a case in which it concludes")
        .in(symptom.id(), List.of(rule.id()));
  }
}
