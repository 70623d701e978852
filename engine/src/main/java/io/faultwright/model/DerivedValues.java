package io.faultwright.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Computes the derived readings of a knowledge base, and fills in what is assumed. */
public final class DerivedValues {
  private final Map<String, Reading> readings;
  private final List<Reading> derived;
  private final SortedMap<String, Value> assumed = new TreeMap<>();
  private final List<Build> builds;
  private final boolean needRefrigerant;

  public DerivedValues(KnowledgeBase knowledge) {
    this.readings = knowledge.readings();
    this.derived =
        readings.values().stream().filter(reading -> reading.derived().isPresent()).toList();
    readings.forEach((id, one) -> one.assumed().ifPresent(value -> assumed.put(id, value)));
    this.builds = knowledge.equipment().builds();
    this.needRefrigerant =
        derived.stream().anyMatch(reading -> reading.derived().get().needsRefrigerant());
  }

  /** The derived readings that follow from what was observed or is assumed. */
  public SortedMap<String, Value> of(Situation situation) {
    Situation known = withAssumed(situation);
    Optional<String> refrigerant = refrigerant(situation);
    SortedMap<String, Value> values = new TreeMap<>();
    for (Reading reading : derived) {
      value(reading.id(), known, refrigerant).ifPresent(value -> values.put(reading.id(), value));
    }
    return Sorted.copy(values);
  }

  /** The situation with what is assumed, every derived reading that follows, and no other one. */
  public Situation complete(Situation situation) {
    if (derived.isEmpty() && assumed.isEmpty()) {
      return situation;
    }
    SortedMap<String, Value> all = new TreeMap<>(withAssumed(situation).readings());
    derived.forEach(reading -> all.remove(reading.id()));
    all.putAll(of(situation));
    return new Situation(situation.equipment(), all);
  }

  /** The situation with values that are assumed where nothing is said. */
  public Situation withAssumed(Situation situation) {
    if (situation.readings().keySet().containsAll(assumed.keySet())) {
      return situation;
    }
    SortedMap<String, Value> all = new TreeMap<>(assumed);
    all.putAll(situation.readings());
    return new Situation(situation.equipment(), all);
  }

  /** The one refrigerant of every build that the machine can be; empty where they differ. */
  private Optional<String> refrigerant(Situation situation) {
    if (!needRefrigerant) {
      return Optional.empty();
    }
    Set<Optional<String>> found =
        builds.stream()
            .filter(build -> has(build, situation))
            .map(build -> build.model().refrigerant())
            .collect(Collectors.toSet());
    return found.size() == 1 ? found.iterator().next() : Optional.empty();
  }

  private static boolean has(Build build, Situation situation) {
    return situation.equipment().entrySet().stream()
        .allMatch(fact -> build.attribute(fact.getKey()).equals(Optional.of(fact.getValue())));
  }

  private static Optional<BigFraction> amount(Optional<Value> value) {
    return value
        .filter(Value.Number.class::isInstance)
        .map(number -> ((Value.Number) number).amount());
  }

  /**
   * Not taken where an operand is not, or where the curve it is read off has no figure; absent
   * where an operand, or which curve it is, is not known yet.
   */
  private Optional<Value> value(String id, Situation situation, Optional<String> refrigerant) {
    Optional<Derived> form = Optional.ofNullable(readings.get(id)).flatMap(Reading::derived);
    if (form.isEmpty()) {
      return Optional.ofNullable(situation.readings().get(id));
    }
    SortedMap<String, Value> operands = new TreeMap<>();
    form.get()
        .operands()
        .forEach(
            operand ->
                value(operand, situation, refrigerant)
                    .ifPresent(value -> operands.put(operand, value)));
    if (operands.containsValue(new Value.NotTaken())) {
      return Optional.of(new Value.NotTaken());
    }
    Optional<BigFraction> amount =
        form.get()
            .value(operand -> amount(Optional.ofNullable(operands.get(operand))), refrigerant);
    boolean beyond =
        operands.size() == form.get().operands().size()
            && (refrigerant.isPresent() || !form.get().needsRefrigerant());
    return amount.isEmpty() && beyond
        ? Optional.of(new Value.NotTaken())
        : amount.map(Value.Number::new);
  }
}
