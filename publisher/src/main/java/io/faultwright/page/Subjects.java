package io.faultwright.page;

import io.faultwright.model.Condition;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Which readings a condition asks for, with those that limits follow or that they are made of. */
final class Subjects {
  private final KnowledgeBase kb;

  Subjects(KnowledgeBase kb) {
    this.kb = kb;
  }

  /** Every reading that working a symptom may need. */
  SortedSet<String> of(Symptom symptom) {
    return of(
        Stream.of(
                Stream.of(symptom.recognise()),
                symptom.first().stream().map(Symptom.First::when),
                symptom.rules().values().stream().map(rule -> rule.when()),
                symptom.nevers().values().stream().map(never -> never.when()))
            .flatMap(conditions -> conditions)
            .toList());
  }

  SortedSet<String> of(List<Condition> conditions) {
    SortedSet<String> readings = new TreeSet<>();
    conditions.stream()
        .flatMap(Subjects::tests)
        .filter(test -> kb.readings().containsKey(test.subject()))
        .forEach(
            test -> {
              readings.add(test.subject());
              drivers(test).forEach(readings::add);
            });
    List.copyOf(readings).forEach(id -> readings.addAll(kb.readings().get(id).operands()));
    return readings;
  }

  private Stream<String> drivers(Test test) {
    return test.pattern() instanceof AgainstLimits
        ? Optional.ofNullable(kb.limits().get(test.subject())).stream()
            .flatMap(table -> table.drivers().stream())
        : Stream.empty();
  }

  /** The lines of a condition, however deep. */
  static Stream<Test> tests(Condition condition) {
    return condition.match(
        all -> all.parts().stream().flatMap(Subjects::tests),
        any -> any.parts().stream().flatMap(Subjects::tests),
        not -> tests(not.part()),
        Stream::of);
  }
}
