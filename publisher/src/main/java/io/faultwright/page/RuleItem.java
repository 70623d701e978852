package io.faultwright.page;

import java.util.List;

/**
 * One rule as printed.
 *
 * @param anchor id of its element
 * @param number position in the symptom, from 1
 * @param when its conditions
 * @param verb what kind of outcome, for instance {@code Fault}
 * @param outcomes the faults, symptom or people
 * @param because why
 * @param insteadOf numbers of the rules that are silent where this one holds
 */
public record RuleItem(
    String anchor,
    int number,
    List<Clause> when,
    String verb,
    List<Outcome> outcomes,
    String because,
    List<Link> insteadOf) {
  /**
   * Where a rule leads.
   *
   * @param text as printed
   * @param href its page; empty for people
   */
  public record Outcome(String text, String href) {}
}
