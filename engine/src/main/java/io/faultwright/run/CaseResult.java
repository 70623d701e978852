package io.faultwright.run;

import io.faultwright.model.Case;

/**
 * A case of the knowledge base beside what the rules say about it.
 *
 * @param recorded the case, with the answers it expects
 * @param trace what the rules say
 */
public record CaseResult(Case recorded, Trace trace) {
  /**
   * Whether the answers equal the expected ones. A case that cannot be run, for want of its symptom
   * or equipment or by an impossible value, fails even where nothing is expected.
   */
  public boolean passed() {
    return trace.status().runnable() && trace.answers().equals(recorded.expect());
  }
}
