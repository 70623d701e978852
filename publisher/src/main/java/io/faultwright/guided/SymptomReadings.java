package io.faultwright.guided;

import io.faultwright.flow.Course;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Never;
import io.faultwright.model.Reading;
import io.faultwright.model.Rule;
import io.faultwright.model.Sorted;
import io.faultwright.model.Symptom;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Which readings a symptom's outcome can depend on, directly or by what they are worked out of. */
final class SymptomReadings {
  private final KnowledgeBase kb;
  private final SortedSet<String> found = new TreeSet<>();

  private SymptomReadings(KnowledgeBase kb) {
    this.kb = kb;
  }

  /** Their ids. */
  static SortedSet<String> of(KnowledgeBase kb, Symptom symptom, List<Course> courses) {
    SymptomReadings readings = new SymptomReadings(kb);
    conditions(kb, symptom).flatMap(Condition::tests).forEach(test -> readings.add(test.subject()));
    courses.stream()
        .flatMap(course -> course.steps().stream())
        .filter(Course.Ask.class::isInstance)
        .forEach(step -> readings.add(((Course.Ask) step).subject()));
    return Sorted.set(readings.found);
  }

  private static Stream<Condition> conditions(KnowledgeBase kb, Symptom symptom) {
    return Stream.of(
            Stream.of(symptom.recognise()),
            symptom.first().stream().map(Symptom.First::when),
            symptom.rules().values().stream().map(Rule::when),
            symptom.nevers().values().stream().map(Never::when),
            kb.nevers().values().stream().map(Never::when))
        .flatMap(conditions -> conditions);
  }

  private void add(String id) {
    Reading reading = kb.readings().get(id);
    if (reading != null && found.add(id)) {
      reading.operands().forEach(this::add);
      Optional.ofNullable(kb.limits().get(id)).map(LimitsTable::drivers).stream()
          .flatMap(List::stream)
          .forEach(this::add);
    }
  }
}
