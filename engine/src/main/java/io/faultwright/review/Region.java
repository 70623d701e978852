package io.faultwright.review;

import io.faultwright.finding.RegionTest;
import java.util.List;

/**
 * Some situations of a symptom, as few boxes in words.
 *
 * @param boxes the tests that hold together in each, largest first; no tests: every situation
 * @param whole whether the boxes hold all of the situations; no boxes and whole: there are none
 */
public record Region(List<List<RegionTest>> boxes, boolean whole) {
  /** Nothing is known: the time was not enough. */
  public static final Region UNKNOWN = new Region(List.of(), false);

  public Region {
    boxes = boxes.stream().map(List::copyOf).toList();
  }
}
