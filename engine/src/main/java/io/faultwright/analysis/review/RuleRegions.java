package io.faultwright.analysis.review;

import io.faultwright.analysis.space.Box;
import io.faultwright.analysis.space.BoxWords;
import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.OutOfTime;
import io.faultwright.analysis.space.Regions;
import io.faultwright.analysis.space.RulePair;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.review.Region;
import java.util.List;

/** The situations in which rules of a symptom answer, as few boxes in words. */
public final class RuleRegions {
  /** More boxes than a person reads. */
  private static final int MOST = 12;

  private final SymptomSpace symptom;
  private final Diagrams diagrams;
  private final Regions regions;
  private final BoxWords words;

  public RuleRegions(SymptomSpace symptom) {
    this.symptom = symptom;
    this.diagrams = symptom.space().diagrams();
    this.regions = new Regions(symptom.space());
    this.words = new BoxWords(symptom.space(), symptom.possible());
  }

  /** The workable situations in which a rule fires. */
  public Region of(String rule) {
    return inTime(symptom.firing(rule));
  }

  /** The workable situations in which two rules fire. */
  public Region of(RulePair pair) {
    return inTime(diagrams.and(symptom.firing(pair.one()), symptom.firing(pair.other())));
  }

  private Region inTime(int situations) {
    try {
      List<Box> boxes = regions.cover(situations, symptom.possible(), MOST);
      boolean whole =
          diagrams.and(regions.without(situations, boxes), symptom.possible()) == Diagrams.NONE;
      return new Region(boxes.stream().map(words::tests).toList(), whole);
    } catch (OutOfTime late) {
      return Region.UNKNOWN;
    }
  }
}
