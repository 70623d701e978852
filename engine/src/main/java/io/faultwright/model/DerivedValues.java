package io.faultwright.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Computes the derived readings of a knowledge base. */
public final class DerivedValues {
  private final Map<String, Reading> readings;
  private final List<Reading> derived;

  public DerivedValues(KnowledgeBase knowledge) {
    this.readings = knowledge.readings();
    this.derived =
        readings.values().stream().filter(reading -> reading.derived().isPresent()).toList();
  }

  /** The derived readings that follow from what was observed. */
  public SortedMap<String, Value> of(Situation situation) {
    SortedMap<String, Value> values = new TreeMap<>();
    for (Reading reading : derived) {
      value(reading.id(), situation).ifPresent(value -> values.put(reading.id(), value));
    }
    return Sorted.copy(values);
  }

  /** The situation with every derived reading that follows from it, and no other one. */
  public Situation complete(Situation situation) {
    if (derived.isEmpty()) {
      return situation;
    }
    SortedMap<String, Value> all = new TreeMap<>(situation.readings());
    derived.forEach(reading -> all.remove(reading.id()));
    all.putAll(of(situation));
    return new Situation(situation.equipment(), all);
  }

  private static Optional<BigFraction> amount(Value value) {
    return value instanceof Value.Number number ? Optional.of(number.amount()) : Optional.empty();
  }

  /** Not taken where an operand is not; absent where an operand is not known yet. */
  private Optional<Value> value(String reading, Situation situation) {
    Optional<Derived> form = Optional.ofNullable(readings.get(reading)).flatMap(Reading::derived);
    if (form.isEmpty()) {
      return Optional.ofNullable(situation.readings().get(reading));
    }
    SortedMap<String, Value> operands = new TreeMap<>();
    form.get()
        .terms()
        .keySet()
        .forEach(id -> value(id, situation).ifPresent(value -> operands.put(id, value)));
    return operands.containsValue(new Value.NotTaken())
        ? Optional.of(new Value.NotTaken())
        : form.get().value(id -> amount(operands.get(id))).map(Value.Number::new);
  }
}
