package io.faultwright.field;

import io.faultwright.model.Answer;
import io.faultwright.model.Sorted;
import io.faultwright.source.Place;
import java.util.List;
import java.util.SortedSet;

/**
 * Rows in which one thing was said and another confirmed.
 *
 * @param confirmed what was found; empty: nothing yet
 * @param rows how many there are
 * @param first where the first of them stand
 * @param contrast what tells them from the rows that agree with the same rules
 */
public record Disagreement(
    SortedSet<Answer> confirmed, long rows, List<Place> first, Contrast contrast) {
  public Disagreement {
    confirmed = Sorted.set(confirmed);
    first = List.copyOf(first);
  }
}
