package io.faultwright.analysis.redundancy;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Never;
import java.util.List;

/** Finds symptoms in which {@code never} statements leave nothing possible. */
public final class EmptyNeverAnalysis {
  private EmptyNeverAnalysis() {}

  /** At most one finding, naming the statements that together leave nothing. */
  public static List<Finding> findings(SymptomSpace symptom) {
    if (symptom.possible() != Diagrams.NONE) {
      return List.of();
    }
    List<Never> nevers = symptom.nevers();
    return List.of(
        Finding.of(
                FindingKind.EMPTY_NEVER,
                nevers.isEmpty()
                    ? List.of(symptom.symptom().place())
                    : nevers.stream().map(Never::place).toList(),
                "no situation of `"
                    + symptom.symptom().id()
                    + "` is left possible"
                    + (nevers.isEmpty()
                        ? ": its `recognise` contradicts itself"
                        : " by its `never` statements"),
                "mend the statement that excludes too much")
            .in(symptom.symptom().id(), List.of()));
  }
}
