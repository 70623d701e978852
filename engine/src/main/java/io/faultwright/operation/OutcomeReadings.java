package io.faultwright.operation;

import io.faultwright.model.Domain;
import io.faultwright.model.Reading;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Outcome;
import io.faultwright.model.Sequence.Time;
import io.faultwright.model.Value;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** What came of a sequence, as values of the readings that tell it. */
public final class OutcomeReadings {
  private static final Unit SECOND = Units.find("s").orElseThrow();
  private static final String NO_STOP = "none";

  private final Sequence sequence;
  private final Map<String, Reading> readings;

  /**
   * @param readings of the knowledge base, by id
   */
  public OutcomeReadings(Sequence sequence, Map<String, Reading> readings) {
    this.sequence = sequence;
    this.readings = readings;
  }

  /** The values; a time of a phase that was not over yet, or outside the range, is not told. */
  public SortedMap<String, Value> of(Outcomes.Snapshot snapshot) {
    SortedMap<String, Value> values = new TreeMap<>();
    for (Outcome outcome : sequence.outcomes()) {
      value(outcome, snapshot).ifPresent(value -> values.put(outcome.reading(), value));
    }
    return values;
  }

  /** The values of the readings that tell a stop. */
  public SortedMap<String, Value> stop(String stop) {
    SortedMap<String, Value> values = new TreeMap<>();
    sequence.outcomes().stream()
        .filter(outcome -> outcome.tells() == Sequence.Tells.STOP)
        .forEach(outcome -> values.put(outcome.reading(), new Value.Word(stop)));
    return values;
  }

  /** The values of the readings that tell how these times are set. */
  public SortedMap<String, Value> told(Map<String, BigFraction> set) {
    SortedMap<String, Value> values = new TreeMap<>();
    set.forEach(
        (id, seconds) ->
            sequence
                .time(id)
                .reading()
                .ifPresent(
                    reading ->
                        number(reading, seconds).ifPresent(value -> values.put(reading, value))));
    return values;
  }

  private Optional<Value> value(Outcome outcome, Outcomes.Snapshot snapshot) {
    return switch (outcome.tells()) {
      case STOP -> Optional.of(new Value.Word(snapshot.stop().orElse(NO_STOP)));
      case TIME_IN ->
          Optional.ofNullable(snapshot.lastStay().get(outcome.of().orElseThrow()))
              .flatMap(seconds -> number(outcome.reading(), seconds));
      case COUNT_OF ->
          Optional.ofNullable(snapshot.counts().get(outcome.of().orElseThrow()))
              .flatMap(count -> within(outcome.reading(), BigFraction.of(count)));
    };
  }

  private Optional<Value> number(String reading, BigFraction seconds) {
    return within(reading, SECOND.convert(seconds, measured(reading).unit()));
  }

  private Optional<Value> within(String reading, BigFraction amount) {
    return measured(reading).range().contains(amount)
        ? Optional.of(new Value.Number(amount))
        : Optional.empty();
  }

  private Domain.Measured measured(String reading) {
    return (Domain.Measured) readings.get(reading).domain();
  }

  /** Seconds to which times are set, by their ids, as some readings tell it; whatever they are. */
  public SortedMap<String, BigFraction> set(Map<String, Value> known) {
    SortedMap<String, BigFraction> set = new TreeMap<>();
    for (Time time : sequence.times()) {
      time.reading()
          .flatMap(
              reading -> Optional.ofNullable(known.get(reading)).flatMap(v -> seconds(reading, v)))
          .ifPresent(seconds -> set.put(time.id(), seconds));
    }
    return set;
  }

  private Optional<BigFraction> seconds(String reading, Value value) {
    return value.match(
        word -> Optional.empty(),
        number -> Optional.of(measured(reading).unit().convert(number.amount(), SECOND)),
        Optional::empty);
  }

  /** The values of the readings that tell how times are set, those as delivered included. */
  public SortedMap<String, Value> settings(Program program) {
    SortedMap<String, Value> values = new TreeMap<>();
    for (Time time : sequence.times()) {
      time.reading()
          .ifPresent(
              reading ->
                  program
                      .seconds(time)
                      .flatMap(seconds -> number(reading, seconds))
                      .ifPresent(value -> values.put(reading, value)));
    }
    return values;
  }
}
