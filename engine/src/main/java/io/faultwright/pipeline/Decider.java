package io.faultwright.pipeline;

import io.faultwright.compile.LimitsBook;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import io.faultwright.run.NextReading;
import io.faultwright.run.Runner;
import io.faultwright.run.Status;
import io.faultwright.run.Verdict;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Looks for a reading that was not taken yet and tells rival situations apart. */
final class Decider {
  private final KnowledgeBase knowledge;
  private final Runner runner;
  private final LimitsBook limits;

  Decider(KnowledgeBase knowledge, Runner runner, LimitsBook limits) {
    this.knowledge = knowledge;
    this.runner = runner;
    this.limits = limits;
  }

  /**
   * What was found.
   *
   * @param reading absent where no reading tells them apart
   * @param always whether it does so whatever its value
   */
  record Choice(Optional<String> reading, boolean always) {}

  /** The reading that leaves one outcome for most of its values; of equals the easiest. */
  Choice choose(String symptom, List<Situation> rivals) {
    SortedMap<Double, SortedSet<String>> byShare = new TreeMap<>();
    for (String reading : open(knowledge.symptoms().get(symptom), rivals.get(0))) {
      double share = share(symptom, reading, rivals);
      byShare.computeIfAbsent(share, key -> new TreeSet<>()).add(reading);
    }
    byShare.remove(0.0);
    return byShare.isEmpty()
        ? new Choice(Optional.empty(), false)
        : new Choice(
            new NextReading(knowledge, rivals.get(0))
                .among(List.of(byShare.get(byShare.lastKey()))),
            byShare.lastKey() == 1.0);
  }

  /** The readings that bear on the outcome and nobody took yet. */
  private SortedSet<String> open(Symptom symptom, Situation given) {
    SortedSet<String> readings = new TreeSet<>();
    tests(symptom).forEach(test -> addObserved(test.subject(), readings));
    readings.removeAll(given.readings().keySet());
    return readings;
  }

  /** What cannot happen tells situations apart too. */
  private Stream<Condition.Test> tests(Symptom symptom) {
    return Stream.of(
            symptom.first().stream().map(Symptom.First::when),
            symptom.rules().values().stream().map(rule -> rule.when()),
            symptom.nevers().values().stream().map(never -> never.when()),
            knowledge.nevers().values().stream().map(never -> never.when()))
        .flatMap(conditions -> conditions)
        .flatMap(Condition::tests);
  }

  private void addObserved(String subject, Set<String> readings) {
    Reading reading = knowledge.readings().get(subject);
    if (reading != null) {
      reading.operands().forEach(operand -> addObserved(operand, readings));
      if (reading.derived().isEmpty()) {
        readings.add(subject);
      }
    }
  }

  /** The part of a reading's kinds of value that leave one outcome, and a final one. */
  private double share(String symptom, String reading, List<Situation> rivals) {
    int possible = 0;
    int decided = 0;
    for (Value value : values(symptom, reading)) {
      Set<Verdict> left = new HashSet<>();
      for (Situation rival : rivals) {
        Verdict verdict = runner.verdict(symptom, with(rival, reading, value));
        if (canBe(verdict.status())) {
          left.add(verdict);
        }
      }
      possible += left.isEmpty() ? 0 : 1;
      decided += left.size() == 1 && isFinal(left.iterator().next().status()) ? 1 : 0;
    }
    return possible == 0 ? 0 : (double) decided / possible;
  }

  private static boolean canBe(Status status) {
    return status != Status.TAKE_AGAIN && status != Status.NOT_THIS_SYMPTOM;
  }

  private static boolean isFinal(Status status) {
    return status == Status.REFERRED || status == Status.ANSWERED;
  }

  private static Situation with(Situation situation, String reading, Value value) {
    SortedMap<String, Value> readings = new TreeMap<>(situation.readings());
    readings.put(reading, value);
    return new Situation(situation.equipment(), readings);
  }

  /** Every value of a choice; of a quantity one in each stretch that thresholds cut. */
  private List<Value> values(String symptom, String reading) {
    return knowledge
        .readings()
        .get(reading)
        .domain()
        .match(
            measured -> amounts(knowledge.symptoms().get(symptom), reading, measured),
            choice -> choice.ids().stream().<Value>map(Value.Word::new).toList());
  }

  private List<Value> amounts(Symptom symptom, String reading, Domain.Measured domain) {
    TreeSet<BigFraction> ends = new TreeSet<>();
    ends(domain.range()).forEach(ends::add);
    tests(symptom)
        .filter(test -> test.subject().equals(reading))
        .filter(test -> test.pattern() instanceof InInterval)
        .flatMap(test -> ends(((InInterval) test.pattern()).interval()))
        .forEach(ends::add);
    limits.table(reading).stream()
        .flatMap(table -> table.rows().stream())
        .flatMap(row -> Stream.concat(row.low().stream(), row.high().stream()))
        .forEach(ends::add);
    ends.removeIf(end -> !domain.range().contains(end));
    List<Value> values = new ArrayList<>();
    for (BigFraction end : ends) {
      Optional.ofNullable(ends.lower(end))
          .ifPresent(below -> values.add(new Value.Number(below.add(end).divide(2))));
      values.add(new Value.Number(end));
    }
    return values;
  }

  private static Stream<BigFraction> ends(Interval interval) {
    return Stream.concat(interval.low().stream(), interval.high().stream())
        .map(Interval.End::value);
  }
}
