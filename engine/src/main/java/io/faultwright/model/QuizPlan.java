package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * What a quiz asks.
 *
 * @param place where it stands
 * @param items how many items a participant gets
 * @param passMark share of the items that have to be right, in per cent
 * @param blueprint which items are taken; empty: evenly from all symptoms of the session
 * @param own items that the trainer wrote, by id; every participant gets them
 * @param issued items that were given out, by id
 */
public record QuizPlan(
    Place place,
    int items,
    int passMark,
    List<Line> blueprint,
    SortedMap<String, OwnItem> own,
    SortedMap<String, Issued> issued) {
  public QuizPlan {
    blueprint = List.copyOf(blueprint);
    own = Sorted.copy(own);
    issued = Sorted.copy(issued);
  }

  /**
   * So many items about one symptom.
   *
   * @param symptom id
   * @param difficulty of each; absent: any
   */
  public record Line(Place place, String symptom, int items, Optional<Difficulty> difficulty) {}

  /** An item that was given out. */
  public record Issued(Place place, String id, Footing footing) {}

  /**
   * What an item stands on, as it was when the item was made.
   *
   * @param on what it is made from; the knowledge base need not have it any more
   * @param meaning first digits of the hash of its meaning, at least {@link #DIGITS}
   */
  public record Footing(Place place, Signed on, String meaning) {
    /** So many hexadecimal digits are enough to see a change. */
    public static final int DIGITS = 16;
  }
}
