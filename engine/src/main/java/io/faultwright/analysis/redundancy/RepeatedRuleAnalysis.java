package io.faultwright.analysis.redundancy;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Evidence;
import io.faultwright.analysis.space.RulePair;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Rule;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Finds rules that say what one other rule says already: in the same situations (duplicate) or in
 * some of them (subsumed).
 */
public final class RepeatedRuleAnalysis {
  private final SymptomSpace symptom;
  private final Diagrams diagrams;
  private final SortedMap<String, Rule> rules;

  private RepeatedRuleAnalysis(SymptomSpace symptom) {
    this.symptom = symptom;
    this.diagrams = symptom.space().diagrams();
    this.rules = symptom.symptom().rules();
  }

  /** One finding per rule that another one makes superfluous. */
  public static List<Finding> findings(SymptomSpace symptom) {
    return new RepeatedRuleAnalysis(symptom).findings();
  }

  private List<Finding> findings() {
    SortedMap<String, Rule> covering = new TreeMap<>();
    for (RulePair pair : symptom.meetings()) {
      note(covering, rules.get(pair.one()), rules.get(pair.other()));
      note(covering, rules.get(pair.other()), rules.get(pair.one()));
    }
    return covering.entrySet().stream()
        .map(entry -> finding(rules.get(entry.getKey()), entry.getValue()))
        .toList();
  }

  /** Of several rules that cover one, the first is named. */
  private void note(SortedMap<String, Rule> covering, Rule other, Rule rule) {
    if (covers(other, rule)) {
      covering.merge(rule.id(), other, (a, b) -> a.id().compareTo(b.id()) < 0 ? a : b);
    }
  }

  /** Whether a rule adds nothing beside another; of two equal rules the later id is superfluous. */
  private boolean covers(Rule other, Rule rule) {
    int own = symptom.firing(rule.id());
    int its = symptom.firing(other.id());
    return rule.insteadOf().isEmpty()
        && other.conclusion().equals(rule.conclusion())
        && diagrams.within(own, its)
        && (own != its || other.id().compareTo(rule.id()) < 0 || !other.insteadOf().isEmpty());
  }

  private Finding finding(Rule rule, Rule other) {
    boolean equal = symptom.firing(rule.id()) == symptom.firing(other.id());
    String relation =
        equal ? "fires in exactly the situations of `" : "fires only in situations of `";
    Finding finding =
        Finding.of(
                equal ? FindingKind.DUPLICATE_RULE : FindingKind.SUBSUMED_RULE,
                List.of(rule.place(), other.place()),
                "rule `" + rule.id() + "` " + relation + other.id() + "`, with the same conclusion",
                "take rule `" + rule.id() + "` out, or mend its conditions")
            .in(symptom.symptom().id(), List.of(rule.id(), other.id()));
    return new Evidence(symptom).show(finding, symptom.firing(rule.id()));
  }
}
