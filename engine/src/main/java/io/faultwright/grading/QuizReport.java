package io.faultwright.grading;

import java.util.List;
import java.util.Optional;

/**
 * How good a quiz is, by what was handed in.
 *
 * @param participants how many handed it in
 * @param mean of the totals, in items
 * @param deviation of the totals of these participants, in items; divides by n
 * @param reliability nothing where it cannot be told
 * @param items in the order of the quiz
 */
public record QuizReport(
    int participants,
    double mean,
    double deviation,
    Optional<Reliability> reliability,
    List<ItemReport> items) {
  public QuizReport {
    items = List.copyOf(items);
  }
}
