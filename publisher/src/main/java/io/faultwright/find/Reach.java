package io.faultwright.find;

import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Sequence;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** For which families a thing is worth finding; none are named where it is for all of them. */
final class Reach {
  private final List<Build> builds;
  private final int families;

  /** What the symptoms that conclude a fault apply to, by the id of the fault. */
  private final Map<String, List<Condition>> told = new HashMap<>();

  Reach(KnowledgeBase kb) {
    this.builds = kb.equipment().builds();
    this.families = kb.equipment().families().size();
    kb.symptoms()
        .values()
        .forEach(
            symptom ->
                faults(symptom)
                    .forEach(
                        fault ->
                            told.computeIfAbsent(fault, none -> new ArrayList<>())
                                .add(symptom.applies())));
  }

  private static Stream<String> faults(Symptom symptom) {
    return symptom.rules().values().stream()
        .flatMap(rule -> rule.conclusion().answers().stream())
        .filter(Answer.OfFault.class::isInstance)
        .map(Answer::name)
        .distinct();
  }

  List<String> of(Symptom symptom) {
    return where(symptom.applies());
  }

  List<String> of(Reading reading) {
    return where(reading.applies());
  }

  List<String> of(Sequence sequence) {
    return where(sequence.applies());
  }

  private List<String> where(Condition applies) {
    return families(build -> build.satisfies(applies));
  }

  /** Those that can have the fault by one of the symptoms that conclude it. */
  List<String> of(Fault fault) {
    List<Condition> where = told.getOrDefault(fault.id(), List.of());
    return families(
        build ->
            build.satisfies(fault.applies())
                && (where.isEmpty() || where.stream().anyMatch(build::satisfies)));
  }

  private List<String> families(Predicate<Build> has) {
    List<String> found =
        builds.stream()
            .filter(has)
            .map(build -> build.model().family())
            .distinct()
            .sorted()
            .toList();
    return found.size() == families ? List.of() : found;
  }
}
