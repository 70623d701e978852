package io.faultwright.analysis.redundancy;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Rule;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Finds rules that can never fire, with the smallest set of statements that clash. */
public final class DeadRuleAnalysis {
  private DeadRuleAnalysis() {}

  /** One finding per rule. */
  public static List<Finding> findings(SymptomSpace symptom) {
    return symptom.symptom().rules().values().stream()
        .filter(rule -> symptom.firing(rule.id()) == Diagrams.NONE)
        .map(rule -> finding(symptom, rule))
        .toList();
  }

  private static Finding finding(SymptomSpace symptom, Rule rule) {
    List<Clash.Statement> core = Clash.core(symptom, rule);
    List<Place> places = new ArrayList<>(List.of(rule.place()));
    core.stream().map(Clash.Statement::place).filter(p -> !places.contains(p)).forEach(places::add);
    String why =
        core.isEmpty()
            ? "nothing is possible on this equipment"
            : core.stream().map(Clash.Statement::words).collect(Collectors.joining(", "))
                + (core.size() == 1 ? " cannot hold" : " cannot all hold");
    return Finding.of(
            FindingKind.DEAD_RULE,
            places,
            "rule `" + rule.id() + "` can never fire: " + why,
            "mend one of these statements, or take the rule out")
        .in(symptom.symptom().id(), List.of(rule.id()));
  }
}
