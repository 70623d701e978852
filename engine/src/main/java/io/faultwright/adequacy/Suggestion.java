package io.faultwright.adequacy;

import io.faultwright.model.Answer;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import java.util.List;
import java.util.SortedSet;

/**
 * A case that would show something no recorded one does.
 *
 * @param id for the case
 * @param symptom id of the symptom
 * @param given the situation
 * @param answers what the rules say of it; nobody has confirmed that yet
 * @param closes what it would show, in words; for the first of several cases that show it together,
 *     only with the others
 */
public record Suggestion(
    String id, String symptom, Situation given, SortedSet<Answer> answers, List<String> closes) {
  public Suggestion {
    answers = Sorted.set(answers);
    closes = List.copyOf(closes);
  }
}
