package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;

/**
 * An item of a quiz that a trainer wrote.
 *
 * @param id identifier, unique in its quiz
 * @param place where it stands
 * @param symptom id of the symptom it is about
 * @param question as printed
 * @param right the answer that is right
 * @param wrong two to four answers that are not
 * @param because why the right one is right; may be empty
 * @param difficulty as the trainer judges it
 * @param given the situation it is about, against which the rules are asked; absent: none
 * @param footing what it stands on; absent: nothing withdraws it
 */
public record OwnItem(
    String id,
    Place place,
    String symptom,
    String question,
    Reply right,
    List<Reply> wrong,
    String because,
    Difficulty difficulty,
    Optional<Situation> given,
    Optional<QuizPlan.Footing> footing) {
  public OwnItem {
    wrong = List.copyOf(wrong);
  }

  /**
   * One of the answers to choose from.
   *
   * @param answer what it is in the rules; absent: only a text
   * @param text as written; empty for an answer of the rules, which has a title of its own
   */
  public record Reply(Place place, Optional<Answer> answer, String text) {}
}
