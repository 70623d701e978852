package io.faultwright.quiz;

import java.util.List;

/**
 * The quiz of a session, with all answers: for the trainer only.
 *
 * @param session id
 * @param seed from which everything that looks random follows
 * @param variants one for each participant, by number
 */
public record Quiz(String session, long seed, List<Variant> variants) {
  public Quiz {
    variants = List.copyOf(variants);
  }

  /**
   * What one participant gets.
   *
   * @param participant number, counted from 1
   * @param items in the order in which they are asked; the same ids for everybody
   */
  public record Variant(int participant, List<Item> items) {
    public Variant {
      items = List.copyOf(items);
    }
  }
}
