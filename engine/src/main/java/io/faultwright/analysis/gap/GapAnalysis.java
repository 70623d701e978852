package io.faultwright.analysis.gap;

import io.faultwright.analysis.space.Box;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Evidence;
import io.faultwright.analysis.space.MissingLimits;
import io.faultwright.analysis.space.OutOfTime;
import io.faultwright.analysis.space.Regions;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.analysis.space.Witness;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds every possible situation in which a symptom says nothing, as few boxes. */
public final class GapAnalysis {
  private static final String HELP =
      "add a rule for it, widen a condition, or state with `never` that it cannot happen";

  /** More regions than a person reads; closing them changes the rest anyway. */
  private static final int MOST = 100;

  private static final String REST =
      "many more situations; their regions show once the larger ones are closed";

  private static final String UNFINISHED =
      "such situations; the time was not enough to say which they are";

  private GapAnalysis() {}

  /**
   * One finding per box, the largest first, and one for whatever many boxes leave; none is a proof
   * that there is no gap.
   */
  public static List<Finding> findings(SymptomSpace symptom) {
    int gap = gap(symptom);
    Evidence evidence = new Evidence(symptom);
    List<Box> boxes = new Regions(symptom.space()).cover(gap, symptom.possible(), MOST);
    List<Finding> findings = new ArrayList<>();
    for (Box box : boxes) {
      findings.add(evidence.show(finding(symptom, evidence.words(box)), gap, box));
    }
    int rest = new Regions(symptom.space()).without(gap, boxes);
    if (rest != Diagrams.NONE) {
      findings.add(evidence.showAll(finding(symptom, REST), rest));
    }
    return findings;
  }

  /** What was found although the time was over: at most one finding, without its region. */
  public static List<Finding> foundInTime(SymptomSpace symptom) {
    int known = known(symptom);
    return known == Diagrams.NONE
        ? List.of()
        : List.of(
            finding(symptom, UNFINISHED)
                .shownBy(new Witness(symptom.space()).of(known), List.of(), Optional.empty()));
  }

  private static int known(SymptomSpace symptom) {
    try {
      return symptom.unanswered().known();
    } catch (OutOfTime late) {
      return Diagrams.NONE;
    }
  }

  /** The share of the situations in which no rule answers. */
  public static Share share(SymptomSpace symptom) {
    int undecided = new MissingLimits(symptom).undecided();
    return undecided == Diagrams.NONE
        ? symptom.share(symptom.unanswered())
        : symptom.share(gap(symptom));
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
