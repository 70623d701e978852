package io.faultwright.analysis.redundancy;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Answer;
import io.faultwright.model.Condition;
import io.faultwright.model.Rule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Finds conditions that can be dropped without changing the outcome of any possible situation. A
 * rule that silences others, or only excludes, is judged more strictly: it must fire in the same
 * situations.
 */
public final class IdleConditionAnalysis {
  private final SymptomSpace symptom;
  private final Diagrams diagrams;
  private final SortedMap<Answer, List<String>> answering = new TreeMap<>();

  private IdleConditionAnalysis(SymptomSpace symptom) {
    this.symptom = symptom;
    this.diagrams = symptom.space().diagrams();
    symptom.symptom().rules().values().forEach(this::noteAnswers);
  }

  private void noteAnswers(Rule rule) {
    rule.conclusion()
        .answers()
        .forEach(
            answer -> answering.computeIfAbsent(answer, key -> new ArrayList<>()).add(rule.id()));
  }

  /** One finding per condition that is idle while all others stay. */
  public static List<Finding> findings(SymptomSpace symptom) {
    IdleConditionAnalysis analysis = new IdleConditionAnalysis(symptom);
    return symptom.symptom().rules().values().stream()
        .flatMap(rule -> analysis.findings(rule).stream())
        .toList();
  }

  private List<Finding> findings(Rule rule) {
    int fires = symptom.firing(rule.id());
    List<Finding> findings = new ArrayList<>();
    if (fires == Diagrams.NONE) {
      return findings;
    }
    for (Map.Entry<Condition, Condition> without : Dropped.each(rule.when()).entrySet()) {
      int when = symptom.space().truth(without.getValue()).isTrue();
      int wider = diagrams.and(symptom.workable(), symptom.fires(rule.id(), when));
      if (changesNothing(rule, diagrams.minus(wider, fires)) && diagrams.within(fires, wider)) {
        findings.add(finding(rule, without.getKey()));
      }
    }
    return findings;
  }

  /** Whether the rule's answers stand already wherever it would newly fire. */
  private boolean changesNothing(Rule rule, int more) {
    if (!rule.insteadOf().isEmpty() || rule.conclusion().answers().isEmpty()) {
      return more == Diagrams.NONE;
    }
    return rule.conclusion().answers().stream()
        .allMatch(answer -> symptom.without(more, answering.get(answer)) == Diagrams.NONE);
  }

  private Finding finding(Rule rule, Condition idle) {
    Condition.Test test = idle.tests().findFirst().orElseThrow();
    return Finding.of(
            FindingKind.IDLE_CONDITION,
            List.of(test.place()),
            "the condition on `"
                + test.subject()
                + "` in rule `"
                + rule.id()
                + "` can be dropped without changing any outcome",
            "drop it, or find out what it should have separated")
        .in(symptom.symptom().id(), List.of(rule.id()));
  }
}
