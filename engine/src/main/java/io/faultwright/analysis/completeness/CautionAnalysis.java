package io.faultwright.analysis.completeness;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Access;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Finds readings and steps that touch live voltage or the refrigerant circuit without a caution.
 */
public final class CautionAnalysis {
  private CautionAnalysis() {}

  public static List<Finding> findings(KnowledgeBase knowledge) {
    List<Finding> findings = new ArrayList<>();
    for (Reading reading : knowledge.readings().values()) {
      boolean observed = reading.derived().isEmpty();
      if (observed && reading.access().hazardous() && reading.cautions().isEmpty()) {
        String what = "the reading `" + reading.id() + "`";
        findings.add(finding(reading.place(), what, reading.access()));
      }
    }
    knowledge.faults().values().forEach(fault -> findings.addAll(findings(fault)));
    return findings;
  }

  private static List<Finding> findings(Fault fault) {
    return Stream.concat(fault.remedy().stream(), fault.verify().stream())
        .filter(step -> step.access().hazardous())
        .filter(step -> step.cautions().isEmpty() && fault.cautions().isEmpty())
        .map(
            step ->
                finding(step.place(), "a step of the fault `" + fault.id() + "`", step.access()))
        .toList();
  }

  private static Finding finding(Place place, String what, Access access) {
    return Finding.of(
        FindingKind.MISSING_CAUTION,
        place,
        what + " has access `" + access.word() + "` and no caution",
        "name a caution in `cautions`, or let one cover `" + access.word() + "` by `covers`");
  }
}
