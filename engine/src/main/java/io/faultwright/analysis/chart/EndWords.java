package io.faultwright.analysis.chart;

import io.faultwright.model.Answer;
import io.faultwright.model.Chart.Target;
import java.util.Collection;
import java.util.stream.Collectors;

/** Where a chart leads, in words for messages. */
final class EndWords {
  private EndWords() {}

  /** Everything that is told at once. */
  static String all(Collection<Answer> answers) {
    return answers.stream().map(EndWords::answer).collect(Collectors.joining(" and "));
  }

  static String target(Target target) {
    return target.match(
        next -> "on to step `" + next.step() + "`", end -> "to " + all(end.answers()));
  }

  private static String answer(Answer answer) {
    if (answer instanceof Answer.OfFault) {
      return "fault `" + answer.name() + "`";
    }
    return answer instanceof Answer.OfReferral
        ? "a referral to `" + answer.name() + "`"
        : "an escalation to `" + answer.name() + "`";
  }
}
