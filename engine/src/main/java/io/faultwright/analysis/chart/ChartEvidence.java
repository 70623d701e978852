package io.faultwright.analysis.chart;

import io.faultwright.analysis.space.Box;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Evidence;
import io.faultwright.analysis.space.Regions;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Shows findings about a chart by few regions of situations, each with a witness. */
final class ChartEvidence {
  /** More regions of one mistake than a person reads. */
  private static final int MOST = 8;

  private static final String REST =
      ", in many more situations; their regions show once the others are mended";

  private final SymptomSpace symptom;
  private final Evidence evidence;
  private final Regions regions;

  ChartEvidence(ChartSpace space) {
    this.symptom = space.symptom();
    this.evidence = new Evidence(symptom);
    this.regions = new Regions(space.space());
  }

  /** The finding once for each region, and once for whatever many regions leave; often none. */
  List<Finding> boxes(Finding finding, int situations) {
    List<Finding> shown = new ArrayList<>();
    if (situations != Diagrams.NONE) {
      List<Box> boxes = regions.cover(situations, symptom.possible(), MOST);
      boxes.forEach(box -> shown.add(counted(evidence.show(finding, situations, box))));
      int rest = regions.without(situations, boxes);
      if (rest != Diagrams.NONE) {
        shown.add(counted(evidence.showAll(finding.saying(finding.message() + REST), rest)));
      }
    }
    return shown;
  }

  /** The finding once; its region is the largest. */
  Finding largest(Finding finding, int situations) {
    return counted(evidence.show(finding, situations));
  }

  /** Situations that are sent elsewhere first have no share of those that are worked. */
  private static Finding counted(Finding finding) {
    boolean none = finding.share().filter(share -> share.high() > 0).isEmpty();
    return none
        ? finding.shownBy(finding.witness().orElseThrow(), finding.region(), Optional.empty())
        : finding;
  }
}
