package io.faultwright.analysis.random;

import io.faultwright.model.Build;
import io.faultwright.model.Equipment;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One complete situation of the brute-force search.
 *
 * @param build the equipment
 * @param values by reading: a word, a {@link Long} in units of 1/{@link Oracle#SCALE}, or {@link
 *     #REFUSED}; readings that the equipment lacks are left out
 */
record Point(Build build, Map<String, Object> values) {
  /** The reading cannot be taken. */
  static final Object REFUSED = new Object();

  /** The same for the rules; with or without the machine it is about. */
  Situation situation(boolean machine) {
    SortedMap<String, String> equipment = new TreeMap<>();
    if (machine) {
      equipment.put(Equipment.MODEL, build.model().id());
      build.software().ifPresent(version -> equipment.put(Equipment.SOFTWARE, version.text()));
    }
    SortedMap<String, Value> readings = new TreeMap<>();
    values.forEach((id, value) -> readings.put(id, value(value)));
    return new Situation(equipment, readings);
  }

  private static Value value(Object value) {
    if (value == REFUSED) {
      return new Value.NotTaken();
    }
    return value instanceof Long amount
        ? new Value.Number(BigFraction.of(amount, Oracle.SCALE))
        : new Value.Word((String) value);
  }
}
