package io.faultwright.find;

import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.List;
import java.util.function.Predicate;

/** For which families a thing is worth finding; none are named where it is for all of them. */
final class Reach {
  private final KnowledgeBase kb;

  Reach(KnowledgeBase kb) {
    this.kb = kb;
  }

  List<String> of(Symptom symptom) {
    return where(symptom.applies());
  }

  List<String> of(Reading reading) {
    return where(reading.applies());
  }

  private List<String> where(Condition applies) {
    return families(build -> build.satisfies(applies));
  }

  /** Those that can have the fault by one of the symptoms that conclude it. */
  List<String> of(Fault fault) {
    List<Condition> told =
        kb.symptoms().values().stream()
            .filter(symptom -> concludes(symptom, fault.id()))
            .map(Symptom::applies)
            .toList();
    return families(
        build ->
            build.satisfies(fault.applies())
                && (told.isEmpty() || told.stream().anyMatch(build::satisfies)));
  }

  private static boolean concludes(Symptom symptom, String fault) {
    return symptom.rules().values().stream()
        .map(Rule::conclusion)
        .flatMap(conclusion -> conclusion.answers().stream())
        .anyMatch(answer -> answer.equals(new Answer.OfFault(fault)));
  }

  private List<String> families(Predicate<Build> has) {
    List<String> found =
        kb.equipment().builds().stream()
            .filter(has)
            .map(build -> build.model().family())
            .distinct()
            .sorted()
            .toList();
    return found.size() == kb.equipment().families().size() ? List.of() : found;
  }
}
