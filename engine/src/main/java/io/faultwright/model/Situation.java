package io.faultwright.model;

import java.util.SortedMap;

/**
 * What is known about a machine; readings not listed are not known yet.
 *
 * @param equipment family, model, software or option to its value
 * @param readings reading id to what was observed
 */
public record Situation(SortedMap<String, String> equipment, SortedMap<String, Value> readings) {
  public Situation {
    equipment = Sorted.copy(equipment);
    readings = Sorted.copy(readings);
  }
}
