package io.faultwright.page;

import java.util.List;

/**
 * What the checking found; printed in drafts only.
 *
 * @param errors how many of them are errors
 * @param items errors first
 */
public record FindingsSection(int errors, List<Item> items) implements Content {
  /**
   * One finding.
   *
   * @param severity {@code error} or {@code warning}
   * @param kind its slug
   * @param symptom the symptom it concerns; none or one
   * @param message what is wrong
   * @param help the cure
   * @param places file, line and column
   * @param region all situations it is about
   * @param witness one such situation
   */
  public record Item(
      String severity,
      String kind,
      List<Link> symptom,
      String message,
      String help,
      List<String> places,
      List<Fact> region,
      List<Fact> witness) {}
}
