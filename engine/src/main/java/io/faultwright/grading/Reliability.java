package io.faultwright.grading;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * How far a score can be relied on.
 *
 * <p>Source: G. F. Kuder, M. W. Richardson, "The theory of the estimation of test reliability",
 * Psychometrika 2 (1937), formulas 20 and 21; from memory.
 *
 * @param kr20 Kuder-Richardson formula 20, at most 1; may be negative where items disagree
 * @param kr21 formula 21, which takes all items to be equally hard and so never exceeds formula 20
 * @param standardError of a score, in items: the deviation of scores times the root of 1 - kr20
 */
public record Reliability(double kr20, double kr21, double standardError) {
  /**
   * From the totals of all participants.
   *
   * @param marks 1 or 0 of each participant, one row for each item
   * @param totals of each participant
   * @return nothing where there are fewer than two items, or all totals are the same
   */
  static Optional<Reliability> of(int[][] marks, int[] totals) {
    int items = marks.length;
    long spread = Sample.spread(totals);
    if (items < 2 || spread == 0) {
      return Optional.empty();
    }
    long chance = Stream.of(marks).mapToLong(Sample::spread).sum();
    double variance = Sample.variance(totals);
    double mean = Sample.mean(totals);
    double factor = items / (items - 1.0);
    double kr20 = factor * (spread - chance) / spread;
    double kr21 = factor * (1 - mean * (items - mean) / (items * variance));
    return Optional.of(new Reliability(kr20, kr21, Math.sqrt(variance * (1 - kr20))));
  }
}
