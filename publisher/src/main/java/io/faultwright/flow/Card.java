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
 * @param first what must be right first, and where to go otherwise; a line each
 * @param entries what shows each outcome, as an outline
 */
public record Card(
    String title,
    String scope,
    List<Warning> warnings,
    List<String> limits,
    List<String> first,
    List<Entry> entries) {
  public Card {
    warnings = List.copyOf(warnings);
    limits = List.copyOf(limits);
    first = List.copyOf(first);
    entries = List.copyOf(entries);
  }

  /**
   * A line of the outline.
   *
   * @param depth how many lines above it must hold as well
   * @param conditions readings
   * @param outcome what is the matter, or what to do, where they hold; empty where more is asked
   */
  public record Entry(int depth, String conditions, String outcome) {}
}
