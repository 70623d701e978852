package io.faultwright.analysis.mutation;

import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.analysis.coverage.Threshold;
import io.faultwright.analysis.judge.Judge;
import io.faultwright.analysis.judge.Observed;
import io.faultwright.model.Band;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.LimitsTable.Row;
import io.faultwright.model.Reading;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Situations that differ from a recorded one in a single value, chosen where a mistake in some
 * tests is likely to show.
 */
final class NearCases {
  private final KnowledgeBase kb;
  private final Judge judge;
  private final Symptom symptom;

  NearCases(Judge judge, Symptom symptom) {
    this.kb = judge.knowledge();
    this.judge = judge;
    this.symptom = symptom;
  }

  /** Those near some cases that can be met. */
  List<Sighting> of(Collection<Sighting> cases, Collection<Test> tests) {
    return cases.stream()
        .flatMap(one -> tests.stream().flatMap(test -> near(one.observed(), test)))
        .distinct()
        .map(situation -> Sighting.of(judge, symptom, situation))
        .filter(one -> one.ruling().canBe())
        .toList();
  }

  private Stream<Situation> near(Observed one, Test test) {
    if (!kb.readings().containsKey(test.subject())) {
      return test.subject().equals(Equipment.SOFTWARE) ? otherSoftware(one) : Stream.of();
    }
    Reading reading = kb.readings().get(test.subject());
    return reading.derived().isPresent()
        ? Stream.of()
        : values(reading, one, test).stream().map(value -> with(one.given(), reading.id(), value));
  }

  private Stream<Situation> otherSoftware(Observed one) {
    return kb.equipment().versions().stream()
        .map(
            version -> {
              SortedMap<String, String> facts = new TreeMap<>(one.given().equipment());
              facts.put(Equipment.SOFTWARE, version.text());
              return new Situation(facts, one.given().readings());
            });
  }

  private static Situation with(Situation given, String reading, Value value) {
    SortedMap<String, Value> readings = new TreeMap<>(given.readings());
    readings.put(reading, value);
    return new Situation(given.equipment(), readings);
  }

  /**
   * Those that lie beside the limits of a reading, at every row of their table: on the same
   * equipment where the row is about it, else on some that it is about.
   */
  List<Sighting> besideLimits(Collection<Sighting> cases, LimitsTable table) {
    return cases.stream()
        .flatMap(one -> table.rows().stream().flatMap(row -> at(one.observed(), table, row)))
        .map(situation -> judge.observe(symptom, situation))
        .filter(one -> !one.builds().isEmpty() && one.band(table.reading()).isPresent())
        .flatMap(one -> beside(one, table.reading()))
        .distinct()
        .map(situation -> Sighting.of(judge, symptom, situation))
        .filter(one -> one.ruling().canBe())
        .toList();
  }

  private Stream<Situation> at(Observed one, LimitsTable table, Row row) {
    SortedMap<String, Value> readings = new TreeMap<>(one.given().readings());
    for (int i = 0; i < row.at().size(); i++) {
      String driver = table.drivers().get(i);
      Interval at = row.at().get(i);
      if (one.amount(driver).filter(at::contains).isEmpty()) {
        readings.put(driver, new Value.Number(at.low().orElseThrow().value()));
      }
    }
    return Stream.concat(one.builds().stream(), kb.equipment().builds().stream())
        .filter(build -> build.satisfies(row.builds()))
        .limit(1)
        .map(build -> new Situation(build.facts(), readings));
  }

  /** What is worked out has the value it has. */
  private Stream<Situation> beside(Observed one, String reading) {
    if (kb.readings().get(reading).derived().isPresent()) {
      return Stream.of(one.given());
    }
    Band band = one.band(reading).orElseThrow();
    BigFraction step = Threshold.step(kb.readings().get(reading));
    return Stream.concat(band.low().stream(), band.high().stream())
        .map(end -> onGrid(end, step))
        .flatMap(end -> Stream.of(end.subtract(step), end, end.add(step)))
        .map(value -> with(one.given(), reading, new Value.Number(value)));
  }

  private static List<Value> values(Reading reading, Observed one, Test test) {
    if (reading.domain() instanceof Domain.Choice choice) {
      return choice.ids().stream().<Value>map(Value.Word::new).toList();
    }
    BigFraction step = Threshold.step(reading);
    Collection<BigFraction> around = new TreeSet<>(BigFraction::compareTo);
    ends(reading, one, test)
        .forEach(end -> around.addAll(List.of(end.subtract(step), end, end.add(step))));
    return around.stream().<Value>map(Value.Number::new).toList();
  }

  private static List<BigFraction> ends(Reading reading, Observed one, Test test) {
    List<BigFraction> ends = new ArrayList<>();
    if (test.pattern() instanceof InInterval within) {
      Threshold.of(within).forEach(threshold -> ends.add(threshold.value()));
    } else if (test.pattern() instanceof AgainstLimits && one.band(reading.id()).isPresent()) {
      Band band = one.band(reading.id()).get();
      band.low().ifPresent(end -> ends.add(onGrid(end, Threshold.step(reading))));
      band.high().ifPresent(end -> ends.add(onGrid(end, Threshold.step(reading))));
    }
    return ends;
  }

  /** The nearest value that an instrument shows. */
  private static BigFraction onGrid(BigFraction value, BigFraction step) {
    BigFraction steps = value.divide(step);
    return step.multiply(BigFraction.of(Math.round(steps.doubleValue())));
  }
}
