package io.faultwright.run;

import io.faultwright.model.Case;

/**
 * A case of the knowledge base beside what the rules say about it.
 *
 * @param recorded the case, with the answers it expects
 * @param trace what the rules say
 */
public record CaseResult(Case recorded, Trace trace) {
  /** Whether the answers are the expected ones. */
  public boolean passed() {
    return trace.verdict().meets(recorded.expect());
  }
}
