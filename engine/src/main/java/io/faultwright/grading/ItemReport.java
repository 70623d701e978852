package io.faultwright.grading;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * How good one item is.
 *
 * @param item its id
 * @param topic the symptom it is about
 * @param difficulty share of the participants who got it right, from 0 to 1; low is hard
 * @param pointBiserial correlation with the totals; nothing where either does not vary
 * @param corrected correlation with the totals without the item itself; nothing as before
 * @param discrimination share of the best who got it right less that of the weakest, -1 to 1
 * @param choices how often each option was chosen, the right one first
 * @param omitted how many left it out
 * @param flags what makes it doubtful
 */
public record ItemReport(
    String item,
    String topic,
    double difficulty,
    Optional<Double> pointBiserial,
    Optional<Double> corrected,
    double discrimination,
    List<Choice> choices,
    int omitted,
    Set<Flag> flags) {
  public ItemReport {
    choices = List.copyOf(choices);
    flags = Collections.unmodifiableSortedSet(new TreeSet<>(flags));
  }

  /** What its discrimination is worth. */
  public Band band() {
    return Band.of(discrimination);
  }
}
