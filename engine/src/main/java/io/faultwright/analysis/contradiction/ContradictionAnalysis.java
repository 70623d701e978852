package io.faultwright.analysis.contradiction;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Evidence;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Rule;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds every pair of rules that fire together with answers that exclude each other. */
public final class ContradictionAnalysis {
  private ContradictionAnalysis() {}

  /** One finding per pair of rules; none is a proof that there is no contradiction. */
  public static List<Finding> findings(SymptomSpace symptom) {
    List<Rule> rules = List.copyOf(symptom.symptom().rules().values());
    Conflicts conflicts = new Conflicts(symptom.symptom().together());
    Map<String, Integer> fires = fires(symptom, rules);
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < rules.size(); i++) {
      for (int j = i; j < rules.size(); j++) {
        finding(symptom, rules.get(i), rules.get(j), conflicts, fires).ifPresent(findings::add);
      }
    }
    return findings;
  }

  private static Map<String, Integer> fires(SymptomSpace symptom, List<Rule> rules) {
    Map<String, Integer> fires = new HashMap<>();
    Diagrams diagrams = symptom.space().diagrams();
    for (Rule rule : rules) {
      fires.put(rule.id(), diagrams.and(symptom.workable(), symptom.fires(rule.id())));
    }
    return fires;
  }

  private static Optional<Finding> finding(
      SymptomSpace symptom, Rule a, Rule b, Conflicts conflicts, Map<String, Integer> fires) {
    return conflicts
        .between(a.conclusion(), b.conclusion())
        .map(conflict -> new Clash(conflict, common(symptom, a, b, fires)))
        .filter(clash -> clash.situations() != Diagrams.NONE)
        .map(clash -> shown(symptom, a, b, clash));
  }

  private record Clash(Conflict conflict, int situations) {}

  private static int common(SymptomSpace symptom, Rule a, Rule b, Map<String, Integer> fires) {
    return symptom.space().diagrams().and(fires.get(a.id()), fires.get(b.id()));
  }

  private static Finding shown(SymptomSpace symptom, Rule a, Rule b, Clash clash) {
    List<Rule> rules = a == b ? List.of(a) : List.of(a, b);
    Finding finding =
        Finding.of(
                FindingKind.CONTRADICTION,
                rules.stream().map(Rule::place).toList(),
                message(a, b, clash.conflict()),
                clash.conflict().help())
            .in(symptom.symptom().id(), rules.stream().map(Rule::id).toList());
    return new Evidence(symptom).show(finding, clash.situations());
  }

  private static String message(Rule a, Rule b, Conflict conflict) {
    String who =
        a == b
            ? "rule `" + a.id() + "` gives"
            : "rules `" + a.id() + "` and `" + b.id() + "` fire in one situation and give";
    return who + " " + conflict.words();
  }
}
