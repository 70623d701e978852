package io.faultwright.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Situations as a table: each state has a likelihood, a result, and an answer to every check. */
public final class TableOfTests implements Situations {
  private final double[] likelihoods;
  private final int[] results;
  private final int[][] answers;
  private final List<BitSet> sets = new ArrayList<>();
  private final Map<BitSet, Integer> numbers = new HashMap<>();
  private final Map<Long, int[]> parts = new HashMap<>();

  /**
   * @param results for each state, which result it is
   * @param answers for each state, its answer to each check
   */
  public TableOfTests(double[] likelihoods, int[] results, int[][] answers) {
    this.likelihoods = likelihoods.clone();
    this.results = results.clone();
    this.answers = answers.clone();
    BitSet all = new BitSet();
    all.set(0, likelihoods.length);
    number(all);
  }

  /** Every state is a result of its own. */
  public static TableOfTests telling(double[] likelihoods, int[][] answers) {
    int[] results = new int[likelihoods.length];
    Arrays.setAll(results, i -> i);
    return new TableOfTests(likelihoods, results, answers);
  }

  private int number(BitSet set) {
    Integer known = numbers.get(set);
    if (known == null) {
      known = sets.size();
      sets.add(set);
      numbers.put(set, known);
    }
    return known;
  }

  public BitSet states(int set) {
    return sets.get(set);
  }

  @Override
  public int all() {
    return 0;
  }

  @Override
  public double[] results(int set) {
    Map<Integer, Double> sums = new TreeMap<>();
    sets.get(set).stream()
        .forEach(state -> sums.merge(results[state], likelihoods[state], Double::sum));
    return sums.values().stream().mapToDouble(sum -> sum).toArray();
  }

  @Override
  public int[] parts(int set, int check) {
    return parts.computeIfAbsent(1000L * set + check, none -> divide(sets.get(set), check));
  }

  private int[] divide(BitSet set, int check) {
    Map<Integer, BitSet> byAnswer = new TreeMap<>();
    set.stream()
        .forEach(
            state ->
                byAnswer.computeIfAbsent(answers[state][check], none -> new BitSet()).set(state));
    return byAnswer.values().stream().mapToInt(this::number).toArray();
  }

  @Override
  public double needed(int set, int check) {
    return sets.get(set).stream()
        .filter(state -> isNeeded(state, check))
        .mapToDouble(state -> likelihoods[state])
        .sum();
  }

  private boolean isNeeded(int state, int check) {
    for (int other = 0; other < results.length; other++) {
      int[] alike = answers[other].clone();
      alike[check] = answers[state][check];
      if (results[other] != results[state] && Arrays.equals(alike, answers[state])) {
        return true;
      }
    }
    return false;
  }

  @Override
  public BitSet first(int set) {
    return new BitSet();
  }

  /** The problem in which each check has a price of its own and is bound to nothing. */
  public Problem priced(double... prices) {
    List<Outlay> outlays = new ArrayList<>();
    List<Check> checks = new ArrayList<>();
    for (double price : prices) {
      checks.add(Check.of(outlays.size()));
      outlays.add(new Outlay(price, price));
    }
    return new Problem(this, outlays, checks);
  }
}
