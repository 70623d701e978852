package io.faultwright.analysis.redundancy;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Rule;
import java.util.ArrayList;
import java.util.List;

/** Finds {@code instead-of} entries that never silence anything. */
public final class InsteadOfAnalysis {
  private InsteadOfAnalysis() {}

  /** One finding per entry without effect. */
  public static List<Finding> findings(SymptomSpace symptom) {
    List<Finding> findings = new ArrayList<>();
    for (Rule rule : symptom.symptom().rules().values()) {
      for (String silenced : rule.insteadOf()) {
        if (!everMeet(symptom, rule.id(), silenced)) {
          findings.add(finding(symptom, rule, silenced));
        }
      }
    }
    return findings;
  }

  private static boolean everMeet(SymptomSpace symptom, String rule, String silenced) {
    Diagrams diagrams = symptom.space().diagrams();
    int both = diagrams.and(symptom.mayHold(rule), symptom.when(silenced));
    return diagrams.and(symptom.workable(), both) != Diagrams.NONE;
  }

  private static Finding finding(SymptomSpace symptom, Rule rule, String silenced) {
    Rule other = symptom.symptom().rules().get(silenced);
    return Finding.of(
            FindingKind.INSTEAD_OF_WITHOUT_EFFECT,
            List.of(rule.place(), other.place()),
            "`instead-of: [" + silenced + "]` in rule `" + rule.id() + "` never silences anything",
            "take it out: the two rules never hold in one situation")
        .in(symptom.symptom().id(), List.of(rule.id(), silenced));
  }
}
