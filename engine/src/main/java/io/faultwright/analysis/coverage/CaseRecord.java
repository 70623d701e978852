package io.faultwright.analysis.coverage;

import io.faultwright.model.Answer;
import io.faultwright.model.Case;
import java.util.SortedSet;

/**
 * What came out when a case was run.
 *
 * @param recorded the case
 * @param got the answers; empty where nothing was concluded
 * @param fired ids of the rules of its symptom that fired
 * @param outcome what came out, in words
 */
public record CaseRecord(
    Case recorded, SortedSet<Answer> got, SortedSet<String> fired, String outcome) {
  /** Whether the case says what the rules say. */
  public boolean passed() {
    return got.equals(recorded.expect());
  }
}
