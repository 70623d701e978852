package io.faultwright.adequacy;

import io.faultwright.model.Answer;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import java.util.SortedSet;

/**
 * A situation that a mistake changes the outcome of.
 *
 * @param symptom id of the symptom it is worked with
 * @param situation the situation
 * @param right what the rules as they are say
 * @param wrong what they say with the mistake
 */
public record Difference(
    String symptom, Situation situation, SortedSet<Answer> right, SortedSet<Answer> wrong) {
  public Difference {
    right = Sorted.set(right);
    wrong = Sorted.set(wrong);
  }
}
