package io.faultwright.analysis.redundancy;

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

/**
 * Finds rules that say what one other rule says already: in the same situations (duplicate) or in
 * some of them (subsumed).
 */
public final class RepeatedRuleAnalysis {
  private final SymptomSpace symptom;
  private final Diagrams diagrams;
  private final List<Rule> rules;
  private final Map<String, Integer> fires = new HashMap<>();

  private RepeatedRuleAnalysis(SymptomSpace symptom) {
    this.symptom = symptom;
    this.diagrams = symptom.space().diagrams();
    this.rules = List.copyOf(symptom.symptom().rules().values());
    rules.forEach(
        rule -> fires.put(rule.id(), diagrams.and(symptom.workable(), symptom.fires(rule.id()))));
  }

  /** One finding per rule that another one makes superfluous. */
  public static List<Finding> findings(SymptomSpace symptom) {
    return new RepeatedRuleAnalysis(symptom).findings();
  }

  private List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (Rule rule : rules) {
      rules.stream()
          .filter(other -> covers(other, rule))
          .findFirst()
          .ifPresent(other -> findings.add(finding(rule, other)));
    }
    return findings;
  }

  /** Whether a rule adds nothing beside another; of two equal rules the later id is superfluous. */
  private boolean covers(Rule other, Rule rule) {
    int own = fires.get(rule.id());
    int its = fires.get(other.id());
    return other != rule
        && own != Diagrams.NONE
        && rule.insteadOf().isEmpty()
        && other.conclusion().equals(rule.conclusion())
        && diagrams.within(own, its)
        && (own != its || other.id().compareTo(rule.id()) < 0 || !other.insteadOf().isEmpty());
  }

  private Finding finding(Rule rule, Rule other) {
    boolean equal = fires.get(rule.id()).equals(fires.get(other.id()));
    String relation =
        equal ? "fires in exactly the situations of `" : "fires only in situations of `";
    Finding finding =
        Finding.of(
                equal ? FindingKind.DUPLICATE_RULE : FindingKind.SUBSUMED_RULE,
                List.of(rule.place(), other.place()),
                "rule `" + rule.id() + "` " + relation + other.id() + "`, with the same conclusion",
                "take rule `" + rule.id() + "` out, or mend its conditions")
            .in(symptom.symptom().id(), List.of(rule.id(), other.id()));
    return new Evidence(symptom).show(finding, fires.get(rule.id()));
  }
}
