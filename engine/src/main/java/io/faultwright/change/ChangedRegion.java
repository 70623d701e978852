package io.faultwright.change;

import io.faultwright.finding.RegionTest;
import io.faultwright.finding.Share;
import io.faultwright.model.Situation;
import java.util.List;

/**
 * Situations whose outcome changed in one and the same way.
 *
 * @param before the outcome in the old revision
 * @param after the outcome in the new revision
 * @param equipment for whom, an <i>and</i> of its tests; empty: for all
 * @param readings in which situations, an <i>and</i> of its tests; empty: in all
 * @param witness a concrete one, in the units of the new revision
 * @param share how many distinguishable situations that is
 * @param replayed whether Drools gave these two outcomes for the witness
 */
public record ChangedRegion(
    Outcome before,
    Outcome after,
    List<RegionTest> equipment,
    List<RegionTest> readings,
    Situation witness,
    Share share,
    boolean replayed) {
  public ChangedRegion {
    equipment = List.copyOf(equipment);
    readings = List.copyOf(readings);
  }

  /** Whether a test is among its words. */
  public boolean says(RegionTest test) {
    return equipment.contains(test) || readings.contains(test);
  }

  /** The same region after Drools agreed on both outcomes of its witness. */
  public ChangedRegion confirmed() {
    return new ChangedRegion(before, after, equipment, readings, witness, share, true);
  }
}
