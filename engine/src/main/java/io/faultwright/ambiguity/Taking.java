package io.faultwright.ambiguity;

import io.faultwright.model.Effort;
import io.faultwright.model.Sorted;
import java.util.List;
import java.util.SortedSet;

/**
 * Readings that are taken together.
 *
 * @param readings what is observed: ids of readings, or of equipment facts on the nameplate
 * @param computed ids of the readings that follow from them
 * @param effort what it takes
 */
public record Taking(SortedSet<String> readings, SortedSet<String> computed, Effort effort) {
  /** Nothing has to be taken: the nameplate tells. */
  public static final Taking NOTHING =
      new Taking(Sorted.set(List.of()), Sorted.set(List.of()), Effort.NONE);

  public Taking {
    readings = Sorted.set(readings);
    computed = Sorted.set(computed);
  }
}
