package io.faultwright.model;

import io.faultwright.quantity.Decimals;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Builds situations for tests. */
public final class SituationBuilder {
  private final SortedMap<String, String> equipment = new TreeMap<>();
  private final SortedMap<String, Value> readings = new TreeMap<>();

  private SituationBuilder() {}

  /** Nothing is known. */
  public static SituationBuilder situation() {
    return new SituationBuilder();
  }

  public SituationBuilder equipment(String fact, String value) {
    equipment.put(fact, value);
    return this;
  }

  public SituationBuilder word(String reading, String value) {
    return value(reading, new Value.Word(value));
  }

  public SituationBuilder amount(String reading, String decimal) {
    return amount(reading, Decimals.parse(decimal));
  }

  public SituationBuilder amount(String reading, BigFraction amount) {
    return value(reading, new Value.Number(amount));
  }

  public SituationBuilder notTaken(String reading) {
    return value(reading, new Value.NotTaken());
  }

  public SituationBuilder value(String reading, Value value) {
    readings.put(reading, value);
    return this;
  }

  public Situation build() {
    return new Situation(equipment, readings);
  }
}
