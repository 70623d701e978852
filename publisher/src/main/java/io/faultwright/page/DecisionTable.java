package io.faultwright.page;

import java.util.List;
import java.util.Locale;

/**
 * The rules of a symptom side by side, with what no rule answers and what several do.
 *
 * @param columns what situations are told apart by
 * @param groups rules first, then gaps, then overlaps
 * @param overlapsWhole whether all overlaps are there
 */
public record DecisionTable(List<String> columns, List<Group> groups, boolean overlapsWhole) {
  /**
   * A rule, a gap or an overlap.
   *
   * @param kind {@code rule}, {@code gap}, {@code clash} for an overlap with answers that exclude
   *     each other, {@code both} for another overlap
   * @param rules the rules it is about; none for a gap
   * @param outcome what is answered
   * @param against rules that answer otherwise in one of the situations
   * @param beside rules that answer, too
   * @param rows cells of each box, one for each column, empty where anything goes
   * @param whole whether the rows hold all situations
   */
  public record Group(
      String kind,
      List<Link> rules,
      String outcome,
      List<Link> against,
      List<Link> beside,
      List<List<String>> rows,
      boolean whole) {}

  /** What a group of lines is. */
  enum Kind {
    RULE,
    GAP,
    CLASH,
    BOTH;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
