package io.faultwright.handin;

import io.faultwright.grading.Score;
import io.faultwright.grading.Sheet;

/**
 * One participant whose answers are graded.
 *
 * @param participant number
 * @param name as the participant wrote it, on one line
 * @param handedIn as written; empty where a table does not say
 * @param paper whether the answers stood in a table, without a check value
 * @param late whether they came after the last day
 * @param sheet what was chosen
 * @param score marks; passed or not without regard to when they came
 */
public record Entry(
    int participant,
    String name,
    String handedIn,
    boolean paper,
    boolean late,
    Sheet sheet,
    Score score) {
  /** Whether the pass mark is reached in time. */
  public boolean passed() {
    return score.passed() && !late;
  }
}
