package io.faultwright.field;

import java.util.List;

/**
 * How often what was said was confirmed.
 *
 * @param ground what was said
 * @param agreed rows in which it was confirmed
 * @param disagreed rows in which something else was
 * @param disagreements most frequent first
 */
public record GroundReport(
    Ground ground, long agreed, long disagreed, List<Disagreement> disagreements) {
  public GroundReport {
    disagreements = List.copyOf(disagreements);
  }
}
