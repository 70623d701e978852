package io.faultwright.report;

import io.faultwright.run.Trace;
import io.faultwright.run.Verdict;

/** How far a situation got, in a sentence for people. */
public final class StatusWords {
  private StatusWords() {}

  public static String of(Trace trace) {
    return of(trace.verdict());
  }

  static String of(Verdict verdict) {
    return switch (verdict.status()) {
      case UNKNOWN_SYMPTOM -> "there is no such symptom";
      case NO_SUCH_EQUIPMENT -> "no published model has this equipment";
      case DOES_NOT_APPLY -> "this symptom is not offered for this equipment";
      case CHECK_VALUES -> "a value cannot be right";
      case TAKE_AGAIN -> "these readings cannot all be right; take them again";
      case NOT_THIS_SYMPTOM -> "this is another complaint";
      case ASK_FIRST -> "something must be right first, and is not known yet";
      case REFERRED -> "something else is to be put right first";
      case ANSWERED -> verdict.contradictory() ? "the rules contradict each other" : "answered";
      case NOTHING_YET -> "no answer yet";
      case NO_ANSWER -> "no rule answers this situation";
    };
  }
}
