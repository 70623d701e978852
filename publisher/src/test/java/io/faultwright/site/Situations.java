package io.faultwright.site;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Domain.Measured;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Never;
import io.faultwright.model.Reading;
import io.faultwright.model.Rule;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Random situations of a symptom, partial and whole, whose quantities lie on, beside and between
 * the figures of its rules and limits.
 */
final class Situations {
  private final KnowledgeBase kb;
  private final Random random;
  private final List<Condition> conditions;
  private final List<Build> builds;
  private final SortedSet<String> readings = new TreeSet<>();

  Situations(KnowledgeBase kb, Symptom symptom, Random random) {
    this.kb = kb;
    this.random = random;
    this.conditions =
        Stream.of(
                Stream.of(symptom.recognise()),
                symptom.first().stream().map(Symptom.First::when),
                symptom.rules().values().stream().map(Rule::when),
                symptom.nevers().values().stream().map(Never::when))
            .flatMap(all -> all)
            .toList();
    this.builds =
        kb.equipment().builds().stream()
            .filter(build -> build.satisfies(symptom.applies()))
            .toList();
    conditions.stream().flatMap(Condition::tests).forEach(test -> add(test.subject()));
  }

  private void add(String id) {
    Reading reading = kb.readings().get(id);
    if (reading != null && readings.add(id)) {
      reading.operands().forEach(this::add);
      Optional.ofNullable(kb.limits().get(id)).map(LimitsTable::drivers).stream()
          .flatMap(List::stream)
          .forEach(this::add);
    }
  }

  /** The next one: half of them whole, the others with a third of the readings left open. */
  Situation next() {
    Build build = builds.get(random.nextInt(builds.size()));
    boolean whole = random.nextBoolean();
    SortedMap<String, Value> values = new TreeMap<>();
    for (String id : readings) {
      Reading reading = kb.readings().get(id);
      boolean asked = reading.derived().isEmpty() && build.satisfies(reading.applies());
      if (asked && (whole || random.nextInt(3) > 0)) {
        values.put(id, value(reading));
      }
    }
    return new Situation(equipment(build), values);
  }

  private SortedMap<String, String> equipment(Build build) {
    SortedMap<String, String> facts = new TreeMap<>(build.facts());
    if (random.nextInt(8) == 0) {
      facts.remove(Equipment.SOFTWARE);
    }
    return facts;
  }

  private Value value(Reading reading) {
    if (random.nextInt(25) == 0) {
      return new Value.NotTaken();
    }
    return reading
        .domain()
        .match(
            measured -> new Value.Number(number(reading.id(), measured)),
            choice -> new Value.Word(pick(words(reading.id(), choice.ids()))));
  }

  /** Mostly values that a rule names. */
  private List<String> words(String reading, List<String> all) {
    List<String> named =
        conditions.stream()
            .flatMap(Condition::tests)
            .filter(test -> test.subject().equals(reading) && test.pattern() instanceof OneOf)
            .flatMap(test -> ((OneOf) test.pattern()).values().stream())
            .toList();
    return named.isEmpty() || random.nextInt(4) == 0 ? all : named;
  }

  private BigFraction number(String reading, Measured domain) {
    if (random.nextInt(60) == 0) {
      return domain.range().high().orElseThrow().value().add(1);
    }
    TreeSet<BigFraction> marks = marks(reading, domain);
    BigFraction mark = pick(List.copyOf(marks));
    BigFraction higher = Optional.ofNullable(marks.higher(mark)).orElse(mark);
    BigFraction between = mark.add(higher.subtract(mark).multiply(random.nextInt(7)).divide(7));
    return random.nextInt(3) == 0 ? mark : between;
  }

  private TreeSet<BigFraction> marks(String reading, Measured domain) {
    TreeSet<BigFraction> marks = new TreeSet<>(BigFraction::compareTo);
    conditions.stream()
        .flatMap(Condition::tests)
        .filter(test -> test.subject().equals(reading) && test.pattern() instanceof InInterval)
        .map(test -> ((InInterval) test.pattern()).interval())
        .flatMap(interval -> Stream.of(interval.low(), interval.high()))
        .flatMap(Optional::stream)
        .forEach(end -> marks.add(end.value()));
    Optional.ofNullable(kb.limits().get(reading)).stream()
        .flatMap(table -> table.rows().stream())
        .flatMap(row -> Stream.of(row.low(), row.high()))
        .flatMap(Optional::stream)
        .forEach(marks::add);
    marks.add(domain.range().low().orElseThrow().value());
    marks.add(domain.range().high().orElseThrow().value());
    marks.removeIf(mark -> !domain.range().contains(mark));
    return marks;
  }

  private <T> T pick(List<T> values) {
    return values.get(random.nextInt(values.size()));
  }

  /** Some situations of each symptom that some equipment has, in turn. */
  static List<Told> of(KnowledgeBase kb, int count, long seed) {
    Random random = new Random(seed);
    List<Symptom> symptoms =
        kb.symptoms().values().stream()
            .filter(
                symptom ->
                    kb.equipment().builds().stream()
                        .anyMatch(build -> build.satisfies(symptom.applies())))
            .toList();
    List<Situations> each =
        symptoms.stream().map(symptom -> new Situations(kb, symptom, random)).toList();
    List<Told> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int which = i % symptoms.size();
      all.add(new Told("random " + i, symptoms.get(which).id(), each.get(which).next()));
    }
    return all;
  }

  /** A situation with the symptom that it is judged by. */
  record Told(String name, String symptom, Situation situation) {}
}
