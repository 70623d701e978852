package io.faultwright.grading;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How one participant did.
 *
 * @param participant number or name
 * @param all over all items
 * @param topics the same for each topic, by its id
 * @param passed whether the pass mark is reached
 */
public record Score(
    String participant, Share all, SortedMap<String, Share> topics, boolean passed) {
  public Score {
    topics = Collections.unmodifiableSortedMap(new TreeMap<>(topics));
  }

  /**
   * The score of a sheet.
   *
   * @param passMark hundredths of the items that must be right
   */
  public static Score of(Sheet sheet, int passMark) {
    Share all = new Share(sheet.right(), sheet.items().size());
    SortedMap<String, Share> topics = new TreeMap<>();
    for (Given given : sheet.items()) {
      Share before = topics.getOrDefault(given.topic(), new Share(0, 0));
      topics.put(given.topic(), before.and(given.isRight()));
    }
    return new Score(sheet.participant(), all, topics, all.reaches(passMark));
  }
}
