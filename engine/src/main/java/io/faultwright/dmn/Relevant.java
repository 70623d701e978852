package io.faultwright.dmn;

import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Never;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What decides a symptom: its own conditions, and the statements of the whole handbook that speak
 * of a reading it asks for, directly or by way of another such statement.
 *
 * @param own recognition, what comes first, and rules
 * @param nevers of the symptom and of the handbook
 */
record Relevant(List<Condition> own, List<Condition> nevers) {
  static Relevant of(KnowledgeBase kb, Symptom symptom) {
    List<Condition> own =
        Stream.of(
                Stream.of(symptom.recognise()),
                symptom.first().stream().map(Symptom.First::when),
                symptom.rules().values().stream().map(Rule::when))
            .flatMap(some -> some)
            .toList();
    List<Condition> nevers =
        new ArrayList<>(symptom.nevers().values().stream().map(Never::when).toList());
    SortedSet<String> asked = new TreeSet<>();
    Stream.concat(own.stream(), nevers.stream()).forEach(one -> asked.addAll(subjects(kb, one)));
    List<Condition> left = new ArrayList<>(kb.nevers().values().stream().map(Never::when).toList());
    while (true) {
      List<Condition> more =
          left.stream()
              .filter(one -> subjects(kb, one).stream().anyMatch(asked::contains))
              .toList();
      if (more.isEmpty()) {
        return new Relevant(own, List.copyOf(nevers));
      }
      more.forEach(one -> asked.addAll(subjects(kb, one)));
      nevers.addAll(more);
      left.removeAll(more);
    }
  }

  /** Readings that a condition speaks of, and those that they are computed from. */
  private static SortedSet<String> subjects(KnowledgeBase kb, Condition condition) {
    SortedSet<String> subjects = new TreeSet<>();
    condition
        .tests()
        .map(Condition.Test::subject)
        .filter(kb.readings()::containsKey)
        .forEach(
            reading -> {
              subjects.add(reading);
              subjects.addAll(kb.readings().get(reading).operands());
            });
    return subjects;
  }

  Stream<Condition.Test> tests() {
    return Stream.concat(own.stream(), nevers.stream()).flatMap(Condition::tests);
  }
}
