package io.faultwright.report;

import io.faultwright.change.Outcome;
import io.faultwright.wording.RuleText;
import java.util.stream.Collectors;

/** What becomes of a situation, in words with ids. */
final class OutcomeText {
  private OutcomeText() {}

  static String of(Outcome outcome) {
    return switch (outcome.kind()) {
      case ANSWERED -> answers(outcome);
      case SENT_ELSEWHERE -> "first: " + names(outcome);
      case CONTRADICTION -> "contradiction: " + answers(outcome);
      case UNANSWERED -> "no rule answers";
      case NO_FIGURE -> "no figure in the limits";
      case CANNOT_HAPPEN -> "cannot happen";
      case NOT_RECOGNISED -> "not this complaint";
      case NOT_OFFERED -> "not offered on this equipment";
    };
  }

  private static String answers(Outcome outcome) {
    return outcome.answers().stream().map(RuleText::answer).collect(Collectors.joining(" and "));
  }

  private static String names(Outcome outcome) {
    return outcome.answers().stream()
        .map(answer -> answer.name())
        .collect(Collectors.joining(" and "));
  }
}
