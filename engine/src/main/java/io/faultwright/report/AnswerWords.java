package io.faultwright.report;

import io.faultwright.model.Answer;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.wording.Wording;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** Answers and faults by their titles, with the ids of faults behind them. */
final class AnswerWords {
  private final Wording wording;

  AnswerWords(KnowledgeBase kb) {
    this.wording = new Wording(kb);
  }

  String of(Answer answer) {
    return wording.answer(answer)
        + (answer instanceof Answer.OfFault ? inBrackets(answer.name()) : "");
  }

  /** Several at once. */
  String all(Collection<Answer> answers) {
    return answers.stream().map(this::of).collect(Collectors.joining(" and "));
  }

  List<String> faults(Collection<String> faults) {
    return faults.stream().map(fault -> wording.fault(fault) + inBrackets(fault)).toList();
  }

  private static String inBrackets(String id) {
    return " (" + id + ")";
  }
}
