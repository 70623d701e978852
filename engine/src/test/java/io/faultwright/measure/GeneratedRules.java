package io.faultwright.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * Rules and samples from a seed: choices of four values and quantities from 0 to 100, each rule
 * testing some of them.
 *
 * @param rules what fires when
 * @param samples every choice and quantity given
 */
record GeneratedRules(List<Rule> rules, List<Sample> samples) {
  static final int CHOICES = 8;
  static final int QUANTITIES = 4;
  static final List<String> VALUES = List.of("a", "b", "c", "d");
  private static final long SEED = 20260302;

  /** A rule: choices that equal a value, and quantities above a threshold. */
  record Rule(String name, Map<Integer, String> choices, Map<Integer, Integer> above) {
    boolean firesOn(Sample sample) {
      return choices.entrySet().stream()
              .allMatch(test -> sample.choices().get(test.getKey()).equals(test.getValue()))
          && above.entrySet().stream()
              .allMatch(test -> sample.quantities().get(test.getKey()) > test.getValue());
    }
  }

  /** A sample: one value for each choice and for each quantity. */
  record Sample(List<String> choices, List<Integer> quantities) {}

  static GeneratedRules of(int rules, int samples) {
    Random random = new Random(SEED);
    List<Rule> made = new ArrayList<>();
    for (int i = 0; i < rules; i++) {
      made.add(rule("rule-" + i, random));
    }
    return new GeneratedRules(made, random.ints(samples).mapToObj(GeneratedRules::sample).toList());
  }

  private static Rule rule(String name, Random random) {
    Map<Integer, String> choices = new TreeMap<>();
    for (int column = 0; column < CHOICES; column++) {
      if (random.nextInt(CHOICES) < 5) {
        choices.put(column, value(random));
      }
    }
    int column = random.nextInt(QUANTITIES);
    return new Rule(name, choices, Map.of(column, 5 * random.nextInt(20)));
  }

  private static Sample sample(int seed) {
    Random random = new Random(seed);
    List<String> choices = random.ints(CHOICES).mapToObj(any -> value(random)).toList();
    return new Sample(choices, random.ints(QUANTITIES, 0, 101).boxed().toList());
  }

  private static String value(Random random) {
    return VALUES.get(random.nextInt(VALUES.size()));
  }
}
