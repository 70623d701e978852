package io.faultwright.run;

import io.faultwright.model.Answer;
import io.faultwright.model.Sorted;
import java.util.List;
import java.util.SortedSet;

/**
 * What the technician is told, without the reasons.
 *
 * @param status how far the situation got
 * @param answers of the rules that fire, or the referral of what is not right first
 * @param contradictory whether answers do not go together, or a concluded fault is ruled out
 */
public record Verdict(Status status, SortedSet<Answer> answers, boolean contradictory) {
  public Verdict {
    answers = Sorted.set(answers);
  }

  /**
   * Whether it says what was expected. A situation that cannot be run, for want of its symptom or
   * equipment or by an impossible value, never does, even where nothing is expected.
   */
  public boolean meets(SortedSet<Answer> expected) {
    return status.runnable() && answers.equals(expected);
  }

  static Verdict silent(Status status) {
    return new Verdict(status, Sorted.set(List.<Answer>of()), false);
  }
}
