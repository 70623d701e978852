package io.faultwright.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Orders of seeded random problems against every order there is, and against known laws. */
class RandomOrdersTest {
  /**
   * For questions of unit price with two answers that tell every state apart: entropy is not above
   * Huffman's code (Proceedings of the IRE 40(9), 1952), that not above the cheapest order, that
   * not above the quick one.
   */
  @Test
  void laws() {
    Random random = new Random(6);
    for (int i = 0; i < 1000; i++) {
      int states = 2 + random.nextInt(9);
      int checks = 4 + random.nextInt(4);
      double[] likelihoods = random.doubles(states, 0.01, 1).toArray();
      double total = Bits.sum(likelihoods);
      double[] shares = Arrays.stream(likelihoods).map(one -> one / total).toArray();
      Problem problem =
          TableOfTests.telling(shares, distinct(random, states, checks))
              .priced(random.doubles(checks).map(none -> 1).toArray());
      Order order = Orders.cheapest(problem, Patience.ENDLESS);
      double entropy = Bits.entropy(shares);
      double huffman = Bits.huffman(shares, 2);
      assertTrue(order.exact());
      assertTrue(entropy <= huffman + 1e-9, "entropy of " + i);
      assertTrue(huffman <= order.weighted() + 1e-9, "code of " + i);
      assertTrue(
          order.weighted() <= Orders.quick(problem).weighted() + 1e-9, "quick order of " + i);
    }
  }

  private static int[][] distinct(Random random, int states, int checks) {
    List<Integer> codes = new ArrayList<>();
    while (codes.size() < states) {
      int code = random.nextInt(1 << checks);
      if (!codes.contains(code)) {
        codes.add(code);
      }
    }
    int[][] answers = new int[states][checks];
    for (int state = 0; state < states; state++) {
      for (int check = 0; check < checks; check++) {
        answers[state][check] = codes.get(state) >> check & 1;
      }
    }
    return answers;
  }

  /** Several answers, shared outlays, checks that wait for others, and checks that come last. */
  @Test
  void everyOrder() {
    Random random = new Random(66);
    for (int i = 0; i < 1500; i++) {
      Problem problem = problem(random);
      Order order = Orders.cheapest(problem, Patience.ENDLESS);
      double least = new EveryOrder(problem).least();
      assertTrue(order.exact(), "problem " + i);
      assertEquals(least, order.weighted(), 1e-9 * Math.max(1, least), "problem " + i);
      assertEquals(least, new EveryOrder(problem).along(order.first()), 1e-9 * Math.max(1, least));
      Order hasty = Orders.cheapest(problem, Patience.of(random.nextInt(30)));
      assertTrue(hasty.atLeast() <= least * (1 + 1e-9) + 1e-12, "bound of problem " + i);
      assertTrue(hasty.weighted() >= least * (1 - 1e-9) - 1e-12, "hasty order of problem " + i);
    }
  }

  private static Problem problem(Random random) {
    int states = 2 + random.nextInt(7);
    int checks = 1 + random.nextInt(6);
    int results = 2 + random.nextInt(states);
    int[][] answers = new int[states][checks];
    int[] of = new int[states];
    double[] likelihoods = new double[states];
    for (int state = 0; state < states; state++) {
      of[state] = random.nextInt(results);
      likelihoods[state] = random.nextInt(12) == 0 ? 0 : random.nextInt(1, 10);
      for (int check = 0; check < checks; check++) {
        answers[state][check] = random.nextInt(1 + random.nextInt(3) + 1);
      }
    }
    likelihoods[0] = 1;
    return new Problem(
        new TableOfTests(likelihoods, tellable(of, answers), answers),
        outlays(random, checks + 2),
        checks(random, checks));
  }

  /** States that no check tells apart have one result. */
  private static int[] tellable(int[] results, int[][] answers) {
    int[] same = results.clone();
    for (int state = 0; state < same.length; state++) {
      for (int other = 0; other < state; other++) {
        if (Arrays.equals(answers[state], answers[other])) {
          same[state] = same[other];
        }
      }
    }
    return same;
  }

  private static List<Outlay> outlays(Random random, int count) {
    List<Outlay> outlays = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double price = random.nextInt(6);
      outlays.add(new Outlay(price, price));
    }
    return outlays;
  }

  private static List<Check> checks(Random random, int count) {
    List<Check> checks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      BitSet outlays = new BitSet();
      outlays.set(i);
      if (random.nextBoolean()) {
        outlays.set(count + random.nextInt(2));
      }
      BitSet after = new BitSet();
      if (i > 0 && random.nextInt(4) == 0) {
        after.set(random.nextInt(i));
      }
      boolean waits = after.stream().anyMatch(earlier -> checks.get(earlier).late());
      checks.add(new Check(outlays, after, waits || random.nextInt(3) == 0));
    }
    return checks;
  }

  /** The same cost where checks and states stand in another order. */
  @Test
  void theOrderOfTheTableMeansNothing() {
    Random random = new Random(7);
    for (int i = 0; i < 200; i++) {
      double[] likelihoods = random.doubles(7, 0.01, 1).toArray();
      int[][] answers = distinct(random, 7, 5);
      double[] prices = random.ints(5, 1, 9).asDoubleStream().toArray();
      Order order =
          Orders.cheapest(
              TableOfTests.telling(likelihoods, answers).priced(prices), Patience.ENDLESS);
      Order turned =
          Orders.cheapest(
              TableOfTests.telling(turned(likelihoods), turned(answers)).priced(turned(prices)),
              Patience.ENDLESS);
      assertEquals(order.weighted(), turned.weighted(), 1e-9);
    }
  }

  private static double[] turned(double[] values) {
    double[] turned = new double[values.length];
    Arrays.setAll(turned, i -> values[values.length - 1 - i]);
    return turned;
  }

  private static int[][] turned(int[][] answers) {
    int[][] turned = new int[answers.length][answers[0].length];
    for (int state = 0; state < answers.length; state++) {
      int[] from = answers[answers.length - 1 - state];
      Arrays.setAll(turned[state], check -> from[from.length - 1 - check]);
    }
    return turned;
  }

  /** Where every check takes space, an order is not cheaper than the least, and seldom larger. */
  @Test
  void spaceMakesOrdersSmaller() {
    Random random = new Random(8);
    int smaller = 0;
    for (int i = 0; i < 200; i++) {
      Problem problem = problem(random);
      Problem spacious =
          new Problem(problem.situations(), problem.outlays(), problem.checks(), 0.5);
      Order cheapest = Orders.cheapest(problem, Patience.ENDLESS);
      Order small = Orders.cheapest(spacious, Patience.ENDLESS);
      assertEquals(cheapest.weighted(), small.atLeast(), 1e-6 * Math.max(1, small.atLeast()));
      assertEquals(
          new EveryOrder(spacious).least(),
          new EveryOrder(spacious).along(small.first()),
          1e-6 * Math.max(1, small.weighted()),
          "problem " + i);
      smaller += checks(small.first()) < checks(cheapest.first()) ? 1 : 0;
    }
    assertTrue(smaller > 10, "smaller: " + smaller);
  }

  private static int checks(Step step) {
    return step instanceof Step.Ask ask
        ? 1 + ask.next().stream().mapToInt(RandomOrdersTest::checks).sum()
        : 0;
  }

  @Test
  void moreThanMayBeLookedIntoIsRefused() {
    Problem problem = problem(new Random(9));
    assertThrows(TooManySets.class, () -> Orders.cheapest(problem, Patience.of(10).atMost(1)));
  }
}
