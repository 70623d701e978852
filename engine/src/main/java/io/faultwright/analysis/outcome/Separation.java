package io.faultwright.analysis.outcome;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.analysis.space.Space;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How much the answers to a question say about the result, in bits (Shannon, Bell System Technical
 * Journal 27, 1948). A result is as likely as its frequency says; its distinguishable situations
 * are equally likely.
 */
public final class Separation {
  /** Differences below this are rounding. */
  public static final double NOTHING = 1e-9;

  private final Space space;
  private final Diagrams diagrams;
  private final Map<Integer, Double> counts = new HashMap<>();

  public Separation(Space space) {
    this.space = space;
    this.diagrams = space.diagrams();
  }

  /** Bits gained by dividing situations into parts. */
  public double gain(int situations, List<Integer> parts, List<Result> results) {
    double[] whole = likelihoods(situations, results);
    double total = sum(whole);
    double gain = entropy(whole);
    for (int part : parts) {
      double[] inside = likelihoods(part, results);
      gain -= sum(inside) / total * entropy(inside);
    }
    return gain;
  }

  /** How likely it is that the situation is one of these, relative to others. */
  public double likelihood(int situations, List<Result> results) {
    return sum(likelihoods(situations, results));
  }

  /** For each result that is possible in some situations, how likely it is there. */
  public double[] present(int situations, List<Result> results) {
    return results.stream()
        .filter(result -> diagrams.and(situations, result.situations()) != Diagrams.NONE)
        .mapToDouble(result -> likelihood(situations, result))
        .toArray();
  }

  private double[] likelihoods(int situations, List<Result> results) {
    return results.stream().mapToDouble(result -> likelihood(situations, result)).toArray();
  }

  private double likelihood(int situations, Result result) {
    int both = diagrams.and(situations, result.situations());
    return both == Diagrams.NONE ? 0 : result.weight() * count(both) / count(result.situations());
  }

  private double count(int diagram) {
    return counts.computeIfAbsent(diagram, key -> space.distinguishable(key).doubleValue());
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  private static double entropy(double[] likelihoods) {
    double total = sum(likelihoods);
    double entropy = 0;
    for (double likelihood : likelihoods) {
      if (likelihood > 0) {
        double part = likelihood / total;
        entropy -= part * StrictMath.log(part) / StrictMath.log(2);
      }
    }
    return entropy;
  }
}
