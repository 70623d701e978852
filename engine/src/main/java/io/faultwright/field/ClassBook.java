package io.faultwright.field;

import io.faultwright.compile.Candidates;
import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.model.Version;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** The classes of every reading and equipment fact, and what is known of both in a situation. */
final class ClassBook {
  /** Machines whose facts are kept; beyond, they are worked out again. */
  private static final int KEPT = 10_000;

  private final KnowledgeBase kb;
  private final List<Build> builds;
  private final Map<String, Classes> classes = new HashMap<>();
  private final Map<Map<String, String>, Map<String, Value>> facts = new HashMap<>();

  ClassBook(KnowledgeBase kb) {
    this.kb = kb;
    this.builds = kb.equipment().builds();
    Map<String, Set<BigFraction>> thresholds =
        kb.symptoms().values().stream()
            .flatMap(symptom -> symptom.rules().values().stream())
            .flatMap(rule -> rule.when().tests())
            .collect(
                Collectors.groupingBy(
                    Condition.Test::subject,
                    Collectors.flatMapping(ClassBook::thresholds, Collectors.toSet())));
    kb.readings()
        .forEach((id, one) -> classes.put(id, of(one, thresholds.getOrDefault(id, Set.of()))));
    kb.equipment().attributes().forEach(fact -> classes.put(fact, ofFact(fact)));
  }

  private static Stream<BigFraction> thresholds(Condition.Test test) {
    return test.pattern() instanceof Condition.InInterval within
        ? Stream.of(within.interval().low(), within.interval().high())
            .flatMap(end -> end.map(Interval.End::value).stream())
        : Stream.of();
  }

  private static Classes of(Reading reading, Collection<BigFraction> thresholds) {
    return reading
        .domain()
        .match(
            measured -> new NumberClasses(measured, thresholds),
            (Domain.Choice choice) -> new WordClasses(choice.ids(), false));
  }

  private Classes ofFact(String fact) {
    Equipment equipment = kb.equipment();
    return switch (fact) {
      case Equipment.FAMILY -> new WordClasses(List.copyOf(equipment.families().keySet()), false);
      case Equipment.MODEL -> new WordClasses(List.copyOf(equipment.models().keySet()), false);
      case Equipment.SOFTWARE ->
          new WordClasses(equipment.versions().stream().map(Version::text).toList(), true);
      default ->
          new WordClasses(
              equipment.options().get(fact).values().stream().map(NamedValue::id).toList(), false);
    };
  }

  Classes of(String subject) {
    return classes.get(subject);
  }

  /** Every reading and fact that is known, facts that follow from others included. */
  Map<String, Value> known(Situation situation) {
    Map<String, Value> known = new HashMap<>(factsOf(situation.equipment()));
    known.putAll(situation.readings());
    return known;
  }

  private Map<String, Value> factsOf(SortedMap<String, String> equipment) {
    if (facts.size() >= KEPT) {
      facts.clear();
    }
    return facts.computeIfAbsent(equipment, this::follow);
  }

  /** What every build that the machine can be has in common. */
  private Map<String, Value> follow(Map<String, String> equipment) {
    Map<String, Value> all = new TreeMap<>();
    List<Build> possible = new ArrayList<>(Candidates.having(equipment, builds));
    for (String fact : kb.equipment().attributes()) {
      Set<String> values =
          possible.stream()
              .flatMap(build -> build.attribute(fact).stream())
              .collect(Collectors.toSet());
      if (values.size() == 1) {
        all.put(fact, new Value.Word(values.iterator().next()));
      }
    }
    return all;
  }
}
