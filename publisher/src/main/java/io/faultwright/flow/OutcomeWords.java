package io.faultwright.flow;

import io.faultwright.analysis.outcome.Result;
import io.faultwright.flow.Node.Ending;
import io.faultwright.flow.Node.Outcome;
import io.faultwright.model.Answer;
import io.faultwright.model.FaultPair;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.wording.Wording;
import io.faultwright.words.Words;
import java.util.List;
import java.util.SortedSet;
import java.util.stream.Collectors;

/** Says where a path ends. */
final class OutcomeWords {
  private static final String HOTLINE = "hotline";

  private final KnowledgeBase knowledge;
  private final Symptom symptom;
  private final Wording wording;
  private final Words say;

  OutcomeWords(KnowledgeBase knowledge, Symptom symptom, Wording wording) {
    this.knowledge = knowledge;
    this.symptom = symptom;
    this.wording = wording;
    this.say = wording.say();
  }

  Outcome outcome(Result result) {
    return outcome(result.answers());
  }

  /** The id of the node that tells these answers. */
  String id(SortedSet<Answer> answers) {
    return outcome(answers).id();
  }

  private Outcome outcome(SortedSet<Answer> answers) {
    if (answers.isEmpty()) {
      return new Outcome(
          "unanswered", Ending.ESCALATION, say.say("The rules end here: ask"), hotline());
    }
    if (answers.size() > 1 && !together(List.copyOf(answers))) {
      String id = answers.stream().map(OutcomeWords::id).collect(Collectors.joining("-or-"));
      return new Outcome(
          id, Ending.ESCALATION, say.say("The rules disagree: ask"), say.orEach(titles(answers)));
    }
    return answers.size() == 1 ? single(answers.first()) : several(answers);
  }

  private boolean together(List<Answer> answers) {
    return answers.stream()
        .allMatch(one -> answers.stream().allMatch(other -> together(one, other)));
  }

  private boolean together(Answer one, Answer other) {
    return one.equals(other)
        || one instanceof Answer.OfFault
            && other instanceof Answer.OfFault
            && symptom.together().contains(FaultPair.of(one.name(), other.name()));
  }

  private Outcome single(Answer answer) {
    if (answer instanceof Answer.OfFault) {
      return fault(id(answer), wording.fault(answer.name()), say.say("Remedy: {0}", answer.name()));
    }
    if (answer instanceof Answer.OfReferral) {
      String title = say.say("Go to: {0}", wording.symptom(answer.name()));
      return new Outcome(id(answer), Ending.REFERRAL, title, say.say("Chart: {0}", answer.name()));
    }
    boolean known = answer.name().equals(HOTLINE);
    return new Outcome(
        id(answer),
        Ending.ESCALATION,
        known ? say.say("Ask the hotline") : say.say("Ask: {0}", wording.escalation(answer.name())),
        known ? hotline() : "");
  }

  private Outcome several(SortedSet<Answer> answers) {
    String id = answers.stream().map(OutcomeWords::id).collect(Collectors.joining("-and-"));
    String remedies = answers.stream().map(Answer::name).collect(Collectors.joining(", "));
    return fault(id, say.andEach(titles(answers)), say.say("Remedies: {0}", remedies));
  }

  private static Outcome fault(String id, String title, String advice) {
    return new Outcome(id, Ending.FAULT, title, advice);
  }

  private List<String> titles(SortedSet<Answer> answers) {
    return answers.stream().map(wording::answer).toList();
  }

  private String hotline() {
    return knowledge.handbook().hotline().orElse("");
  }

  private static String id(Answer answer) {
    String kind =
        answer instanceof Answer.OfFault
            ? "fault."
            : answer instanceof Answer.OfReferral ? "symptom." : "ask.";
    return kind + answer.name();
  }
}
