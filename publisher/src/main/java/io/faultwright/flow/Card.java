package io.faultwright.flow;

import java.util.List;

/**
 * What a technician carries of a symptom: cautions, readings with their limits, and what shows each
 * outcome.
 *
 * @param title of the symptom
 * @param scope equipment it is for; may be empty
 * @param warnings of all its readings, gravest first
 * @param limits one line for each reading that is held against limits
 * @param entries what must be right first, then the outcomes, those met most often first
 */
public record Card(
    String title, String scope, List<Warning> warnings, List<String> limits, List<Entry> entries) {
  public Card {
    warnings = List.copyOf(warnings);
    limits = List.copyOf(limits);
    entries = List.copyOf(entries);
  }

  /**
   * An outcome.
   *
   * @param outcome what is the matter, or what to do
   * @param patterns readings that show it, one line for each way
   */
  public record Entry(String outcome, List<String> patterns) {
    public Entry {
      patterns = List.copyOf(patterns);
    }
  }
}
