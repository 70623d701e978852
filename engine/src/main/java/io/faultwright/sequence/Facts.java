package io.faultwright.sequence;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * What is known of a set of situations whatever was paid before.
 *
 * @param results how likely its results are
 * @param likelihood of all together
 * @param splits the checks that tell something, with the parts they leave
 * @param bits entropy of the results
 */
record Facts(double[] results, double likelihood, List<Split> splits, double bits) {
  /**
   * A check that divides a set.
   *
   * @param check its position
   * @param parts what it leaves, two at least
   * @param bits entropy of its answers
   * @param told bits of the results that its answers tell
   * @param needed how likely it is to meet a situation in which no order can do without it
   */
  record Split(int check, int[] parts, double bits, double told, double needed) {}

  boolean decided() {
    return results.length < 2;
  }

  static Facts of(Problem problem, int set) {
    Situations situations = problem.situations();
    double[] results = situations.results(set);
    double likelihood = Bits.sum(results);
    List<Split> splits = new ArrayList<>();
    for (int check = 0; results.length > 1 && check < problem.checks().size(); check++) {
      int[] parts = situations.parts(set, check);
      if (parts.length > 1) {
        splits.add(split(situations, set, check, parts, results));
      }
    }
    return new Facts(results, likelihood, List.copyOf(splits), Bits.entropy(results));
  }

  private static Split split(
      Situations situations, int set, int check, int[] parts, double[] whole) {
    double[] likelihoods = new double[parts.length];
    double left = 0;
    for (int i = 0; i < parts.length; i++) {
      double[] inside = situations.results(parts[i]);
      likelihoods[i] = Bits.sum(inside);
      left += likelihoods[i] * Bits.entropy(inside);
    }
    double total = Bits.sum(whole);
    double told = total == 0 ? 0 : Math.max(0, Bits.entropy(whole) - left / total);
    return new Split(check, parts, Bits.entropy(likelihoods), told, situations.needed(set, check));
  }

  /** The checks that tell something. */
  BitSet checks() {
    BitSet checks = new BitSet();
    splits.forEach(split -> checks.set(split.check));
    return checks;
  }
}
