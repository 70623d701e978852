package io.faultwright.pipeline;

import io.faultwright.compile.Candidates;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** The builds a machine can be, one for each kind that a symptom tells apart. */
final class BuildClasses {
  private final KnowledgeBase knowledge;
  private final Symptom symptom;
  private final List<Condition> facts;
  private final Map<SortedMap<String, String>, List<Build>> known = new ConcurrentHashMap<>();

  BuildClasses(KnowledgeBase knowledge, Symptom symptom) {
    this.knowledge = knowledge;
    this.symptom = symptom;
    this.facts =
        Stream.of(
                tests(),
                knowledge.limits().values().stream()
                    .flatMap(table -> table.rows().stream())
                    .map(row -> row.builds()),
                knowledge.readings().values().stream().map(reading -> reading.applies()))
            .flatMap(conditions -> conditions)
            .distinct()
            .toList();
  }

  /** Every test on equipment that bears on the outcome. */
  private Stream<Condition> tests() {
    return Stream.of(
            Stream.of(symptom.recognise()),
            symptom.first().stream().map(first -> first.when()),
            symptom.rules().values().stream().map(rule -> rule.when()),
            symptom.nevers().values().stream().map(never -> never.when()),
            knowledge.nevers().values().stream().map(never -> never.when()))
        .flatMap(conditions -> conditions)
        .flatMap(Condition::tests)
        .filter(test -> test.pattern() instanceof OneOf)
        .filter(test -> !knowledge.readings().containsKey(test.subject()))
        .map(test -> test);
  }

  /** One build of each kind that has these facts, in a fixed order; none where none has. */
  List<Build> having(SortedMap<String, String> equipment) {
    return known.computeIfAbsent(equipment, this::find);
  }

  private List<Build> find(SortedMap<String, String> equipment) {
    List<Build> offered =
        knowledge.equipment().builds().stream()
            .filter(build -> build.satisfies(symptom.applies()))
            .toList();
    Map<List<Boolean>, Build> first = new LinkedHashMap<>();
    for (Build build : Candidates.having(equipment, offered)) {
      first.putIfAbsent(facts.stream().map(build::satisfies).toList(), build);
    }
    return new ArrayList<>(first.values());
  }
}
