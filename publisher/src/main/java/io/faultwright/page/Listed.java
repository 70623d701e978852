package io.faultwright.page;

import io.faultwright.model.Sequence;
import java.util.List;
import java.util.SortedSet;

/**
 * What a page of a fault or a reading lists.
 *
 * @param symptoms ids of those whose titles stand on it
 * @param sequences of operation that have to do with it
 */
public record Listed(SortedSet<String> symptoms, List<Sequence> sequences) {
  public Listed {
    sequences = List.copyOf(sequences);
  }
}
