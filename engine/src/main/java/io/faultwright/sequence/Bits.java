package io.faultwright.sequence;

import java.util.Arrays;

/** Sums and entropies (Shannon, Bell System Technical Journal 27, 1948), in a fixed order. */
final class Bits {
  private Bits() {}

  static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  static double log(double value) {
    return StrictMath.log(value) / StrictMath.log(2);
  }

  /** Bits in telling which of some things is the case. */
  static double entropy(double[] likelihoods) {
    double total = sum(likelihoods);
    double entropy = 0;
    for (double likelihood : likelihoods) {
      if (likelihood > 0) {
        double part = likelihood / total;
        entropy -= part * log(part);
      }
    }
    return entropy;
  }

  /**
   * Least expected number of questions with so many answers each that tell some things apart
   * (Huffman, Proceedings of the IRE 40(9), 1952), times their likelihood.
   */
  static double huffman(double[] likelihoods, int answers) {
    if (likelihoods.length < 2) {
      return 0;
    }
    double[] sorted = likelihoods.clone();
    Arrays.sort(sorted);
    int spare = (answers - 1 - (sorted.length - 1) % (answers - 1)) % (answers - 1);
    return merge(sorted, spare, answers);
  }

  /** Two queues, both ascending: what was given, and what was put together. */
  private static double merge(double[] given, int spare, int answers) {
    double[] made = new double[given.length];
    int nextGiven = 0;
    int nextMade = 0;
    int count = 0;
    double cost = 0;
    int dummies = spare;
    int left = given.length + spare;
    while (left > 1) {
      double together = 0;
      for (int i = 0; i < answers; i++) {
        if (dummies > 0) {
          dummies--;
        } else if (nextMade == count
            || nextGiven < given.length && given[nextGiven] <= made[nextMade]) {
          together += given[nextGiven++];
        } else {
          together += made[nextMade++];
        }
      }
      made[count++] = together;
      cost += together;
      left -= answers - 1;
    }
    return cost;
  }
}
