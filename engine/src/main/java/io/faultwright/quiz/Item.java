package io.faultwright.quiz;

import io.faultwright.model.Difficulty;
import io.faultwright.model.Signed;
import io.faultwright.model.Sorted;
import java.util.List;
import java.util.SortedSet;

/**
 * A question of a quiz with its answer. The same item has the same id for every participant, who
 * may be shown other figures, and the choices in another order.
 *
 * @param id identifier, made of what is asked and not of the figures
 * @param stem what is asked
 * @param choices three to five, in the order in which they are shown; exactly one is right
 * @param origin what it is made from
 * @param explanation why the right choice is right
 * @param rating how hard it is
 */
public record Item(
    String id,
    Stem stem,
    List<Choice> choices,
    Origin origin,
    Explanation explanation,
    Rating rating) {
  public static final int FEWEST = 3;
  public static final int MOST = 5;

  public Item {
    choices = List.copyOf(choices);
    long right = choices.stream().filter(Choice::right).count();
    long different = choices.stream().map(Choice::content).distinct().count();
    if (choices.size() < FEWEST
        || choices.size() > MOST
        || right != 1
        || different != choices.size()) {
      throw new IllegalArgumentException(id + ": no three to five choices, one right: " + choices);
    }
  }

  public ItemKind kind() {
    return stem.kind();
  }

  /** Position of the right choice, counted from 0. */
  public int right() {
    int position = 0;
    while (!choices.get(position).right()) {
      position++;
    }
    return position;
  }

  /** Whether a wrong choice is a near miss. */
  public boolean hasNearMiss() {
    return choices.stream().anyMatch(choice -> choice.near().isPresent());
  }

  /**
   * What an item is made from.
   *
   * @param symptom id
   * @param rules ids of the rules of the symptom that make the right choice right; may be none
   * @param footing what its meaning is that of: a change of it withdraws the item
   * @param meaning first digits of the hash of that meaning; empty for an own item without footing
   */
  public record Origin(String symptom, SortedSet<String> rules, Signed footing, String meaning) {
    public Origin {
      rules = Sorted.set(rules);
    }
  }

  /**
   * Why the right choice is right.
   *
   * @param deciding equipment facts and ids of the readings that decide, in the order shown; what
   *     the rules say beside them stands in the origin
   * @param page of the handbook that says more
   */
  public record Explanation(List<String> deciding, Link page) {
    public Explanation {
      deciding = List.copyOf(deciding);
    }
  }

  /**
   * How hard an item is.
   *
   * @param points what has to be heeded, as {@code docs/decisions/quiz-items.md} counts it; 0 for
   *     an own item
   * @param difficulty the class of so many points; of an own item what its author says
   */
  public record Rating(int points, Difficulty difficulty) {
    private static final int MEDIUM_FROM = 6;
    private static final int HARD_FROM = 8;

    public static Rating of(int points) {
      return new Rating(
          points,
          points >= HARD_FROM
              ? Difficulty.HARD
              : points >= MEDIUM_FROM ? Difficulty.MEDIUM : Difficulty.EASY);
    }
  }
}
