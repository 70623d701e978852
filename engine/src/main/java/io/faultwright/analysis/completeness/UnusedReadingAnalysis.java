package io.faultwright.analysis.completeness;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Never;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Finds readings that no symptom asks for, no limits follow and nothing is computed from. */
public final class UnusedReadingAnalysis {
  private UnusedReadingAnalysis() {}

  /** One finding per reading. */
  public static List<Finding> findings(KnowledgeBase knowledge) {
    Set<String> used = new TreeSet<>();
    knowledge.symptoms().values().stream()
        .flatMap(UnusedReadingAnalysis::conditions)
        .flatMap(Condition::tests)
        .forEach(test -> used.add(test.subject()));
    knowledge.charts().values().stream()
        .flatMap(chart -> chart.steps().values().stream())
        .forEach(step -> used.add(step.check()));
    knowledge.limits().values().stream()
        .filter(table -> used.contains(table.reading()))
        .forEach(table -> used.addAll(table.drivers()));
    List.copyOf(used).forEach(id -> addOperands(knowledge, id, used));
    return knowledge.readings().values().stream()
        .filter(reading -> !used.contains(reading.id()))
        .map(
            reading ->
                Finding.of(
                    FindingKind.UNUSED_READING,
                    reading.place(),
                    "no symptom uses the reading `" + reading.id() + "`",
                    "use it in a rule, or take it out"))
        .toList();
  }

  private static void addOperands(KnowledgeBase knowledge, String id, Set<String> used) {
    if (knowledge.readings().containsKey(id)) {
      for (String operand : knowledge.readings().get(id).operands()) {
        used.add(operand);
        addOperands(knowledge, operand, used);
      }
    }
  }

  private static Stream<Condition> conditions(Symptom symptom) {
    return Stream.of(
            Stream.of(symptom.recognise()),
            symptom.first().stream().map(Symptom.First::when),
            symptom.rules().values().stream().map(Rule::when),
            symptom.nevers().values().stream().map(Never::when))
        .flatMap(conditions -> conditions);
  }
}
