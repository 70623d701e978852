package io.faultwright.page;

import io.faultwright.change.Comparison;
import io.faultwright.change.Edit.Concern;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the field is told of a new revision.
 *
 * @param since what it is compared with
 * @param reasons why it changed, as whoever released it wrote; a paragraph each
 * @param language BCP 47 tag of the reasons
 * @param printed what of the printed copies is no longer right, by the tag of the language
 */
public record Bulletin(
    Since since, List<String> reasons, String language, SortedMap<String, PrintedCopies> printed) {
  public Bulletin {
    reasons = List.copyOf(reasons);
    printed = Collections.unmodifiableSortedMap(new TreeMap<>(printed));
  }

  /**
   * Whether there is something to tell: an outcome, the equipment, a complaint or the work changed.
   * Of other words for the same there is none.
   */
  public static boolean isDue(Comparison comparison) {
    return !comparison.sameMeaning() || !comparison.edits(Concern.WORK).isEmpty();
  }

  /** The same with the revisions in another language. */
  public Bulletin with(Since other) {
    return new Bulletin(other, reasons, language, printed);
  }
}
