package io.faultwright.report;

import io.faultwright.model.Case;
import io.faultwright.run.Borderline;
import io.faultwright.run.CaseResult;
import io.faultwright.run.Trace;
import java.util.Optional;

/**
 * A case that was run.
 *
 * @param result the case beside what the rules say
 * @param borderline what else could be true within the tolerances of its readings, if anything
 * @param judged whether the case says what it expects
 */
public record CaseRun(CaseResult result, Optional<Borderline> borderline, boolean judged) {
  public Case recorded() {
    return result.recorded();
  }

  public Trace trace() {
    return result.trace();
  }

  /** Whether it came out as expected; absent where it expects nothing in particular. */
  public Optional<Boolean> passed() {
    return judged ? Optional.of(result.passed()) : Optional.empty();
  }
}
