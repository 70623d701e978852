package io.faultwright.grading;

import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Figures of rows of whole numbers, each row a whole population: variances divide by n, not by n -
 * 1. Sums are exact, so that a correlation of nought is nought and not a little less.
 */
final class Sample {
  private Sample() {}

  /** Mean of at least one number. */
  static double mean(int[] numbers) {
    return (double) IntStream.of(numbers).asLongStream().sum() / numbers.length;
  }

  /** Variance of a population of at least one number. */
  static double variance(int[] numbers) {
    return (double) spread(numbers) / ((long) numbers.length * numbers.length);
  }

  /** The variance times the square of how many numbers there are; exact. */
  static long spread(int[] numbers) {
    return together(numbers, numbers);
  }

  /** The covariance times the square of how many numbers there are in a row; exact. */
  private static long together(int[] one, int[] other) {
    long products = 0;
    long sum = 0;
    long sumOfOther = 0;
    for (int i = 0; i < one.length; i++) {
      products += (long) one[i] * other[i];
      sum += one[i];
      sumOfOther += other[i];
    }
    return one.length * products - sum * sumOfOther;
  }

  /**
   * Pearson's product-moment correlation, which is the point-biserial one where one row holds only
   * 0 and 1; nothing where a row does not vary.
   */
  static Optional<Double> correlation(int[] one, int[] other) {
    double spread = Math.sqrt((double) spread(one) * spread(other));
    return spread == 0 ? Optional.empty() : Optional.of(together(one, other) / spread);
  }
}
