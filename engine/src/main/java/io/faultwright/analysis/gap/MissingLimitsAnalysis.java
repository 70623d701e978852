package io.faultwright.analysis.gap;

import io.faultwright.analysis.space.Box;
import io.faultwright.analysis.space.Evidence;
import io.faultwright.analysis.space.MissingLimits;
import io.faultwright.analysis.space.Regions;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Finds situations in which a technician would stand without a figure to judge a reading by. */
public final class MissingLimitsAnalysis {
  private MissingLimitsAnalysis() {}

  /** One finding per reading and box. */
  public static List<Finding> findings(SymptomSpace symptom) {
    List<Finding> findings = new ArrayList<>();
    Evidence evidence = new Evidence(symptom);
    Regions regions = new Regions(symptom.space());
    for (Map.Entry<String, Integer> entry : new MissingLimits(symptom).byReading().entrySet()) {
      for (Box box : regions.cover(entry.getValue(), symptom.possible())) {
        Finding finding = finding(symptom, entry.getKey(), evidence.words(box));
        findings.add(evidence.show(finding, entry.getValue(), box));
      }
    }
    return findings;
  }

  private static Finding finding(SymptomSpace symptom, String reading, String where) {
    return Finding.of(
            FindingKind.LIMITS_MISSING,
            symptom.space().knowledge().limits().get(reading).place(),
            "the limits of `" + reading + "` have no row " + where,
            "add a row for it, or state with `never` that it cannot happen")
        .in(symptom.symptom().id(), List.of());
  }
}
