package io.faultwright.ambiguity;

import java.util.List;

/**
 * What tells the faults of a handbook apart, symptom by symptom.
 *
 * @param handbook title
 * @param symptoms by id; those that conclude two faults at least
 */
public record Distinctions(String handbook, List<SymptomFaults> symptoms) {
  public Distinctions {
    symptoms = List.copyOf(symptoms);
  }
}
