package io.faultwright.analysis.gap;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Evidence;
import io.faultwright.analysis.space.MissingLimits;
import io.faultwright.analysis.space.Regions;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import java.util.List;

/** Finds every possible situation in which a symptom says nothing, as few boxes. */
public final class GapAnalysis {
  private static final String HELP =
      "add a rule for it, widen a condition, or state with `never` that it cannot happen";

  private GapAnalysis() {}

  /** One finding per box; none is a proof that there is no gap. */
  public static List<Finding> findings(SymptomSpace symptom) {
    int gap = gap(symptom);
    Evidence evidence = new Evidence(symptom);
    return new Regions(symptom.space())
        .cover(gap, symptom.possible()).stream()
            .map(box -> evidence.show(finding(symptom, evidence.words(box)), gap, box))
            .toList();
  }

  /** Possible situations without an answer, apart from those that lack a figure. */
  public static int gap(SymptomSpace symptom) {
    Diagrams diagrams = symptom.space().diagrams();
    return diagrams.minus(symptom.unanswered().whole(), new MissingLimits(symptom).undecided());
  }

  private static Finding finding(SymptomSpace symptom, String where) {
    return Finding.of(FindingKind.GAP, symptom.symptom().place(), "no rule answers " + where, HELP)
        .in(symptom.symptom().id(), List.of());
  }
}
