package io.faultwright.field;

import java.util.List;

/**
 * What recorded jobs say about the rules of a symptom.
 *
 * @param symptom its id
 * @param agreed rows in which the rules say what was confirmed
 * @param disagreed rows in which they do not
 * @param open rows in which nothing was confirmed
 * @param grounds what was said in rows with something confirmed, by rule
 */
public record SymptomReport(
    String symptom, long agreed, long disagreed, long open, List<GroundReport> grounds) {
  public SymptomReport {
    grounds = List.copyOf(grounds);
  }
}
