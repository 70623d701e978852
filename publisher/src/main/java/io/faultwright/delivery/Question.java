package io.faultwright.delivery;

import io.faultwright.quiz.QuizWording.Line;
import java.util.List;

/**
 * What a participant may see of an item. It has no place for what is right, why, how near another
 * choice comes, or how hard it is.
 *
 * @param id of the item; the same for everybody
 * @param known what is known of the machine, in the order shown
 * @param text the question
 * @param choices in the order shown; numbered from 1, since steps of an order have letters
 */
public record Question(String id, List<Line> known, String text, List<String> choices) {
  public Question {
    known = List.copyOf(known);
    choices = List.copyOf(choices);
  }
}
