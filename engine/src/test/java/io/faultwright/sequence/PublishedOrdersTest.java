package io.faultwright.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Orders of checks whose cost is known from elsewhere. */
class PublishedOrdersTest {
  private static final double[] LIKELIHOODS = {.70, .01, .02, .10, .05, .12};
  private static final int[][] ANSWERS = {
    {0, 0, 0, 0, 0},
    {0, 1, 0, 0, 1},
    {0, 0, 1, 1, 0},
    {1, 0, 0, 1, 1},
    {1, 1, 0, 0, 0},
    {1, 1, 1, 1, 0}
  };

  /**
   * Pattipati and Alexandridis, "Application of heuristic search and information theory to
   * sequential fault diagnosis", IEEE Trans. Systems, Man, and Cybernetics 20(4):872-887, 1990. The
   * table is from memory; its optimum was confirmed by exact dynamic programming elsewhere.
   */
  @Test
  void theExampleOf1990() {
    Problem problem = TableOfTests.telling(LIKELIHOODS, ANSWERS).priced(1, 1, 1, 1, 1);
    Order order = Orders.cheapest(problem, Patience.ENDLESS);
    assertEquals(2.18, order.weighted(), 1e-9);
    assertEquals(2.18, order.minutes(), 1e-9);
    assertTrue(order.exact());
    assertEquals(1.59, Bits.huffman(LIKELIHOODS, 2), 1e-9);
    assertEquals(1.4549, Bits.entropy(LIKELIHOODS), 1e-4);
    assertEquals(2.86, Orders.quick(problem).weighted(), 1e-9);
  }

  /**
   * Each component is looked at by itself, and the order of likelihood over price is best: Kadane
   * and Simon, Annals of Statistics 5, 1977; Heckerman, Breese and Rommelse, Communications of the
   * ACM 38(3), 1995. The numbers are ours; 9.8 is the least of all 24 orders, added up by hand. A
   * fifth state that never happens keeps the last component from going without saying.
   */
  @Test
  void likelihoodOverPrice() {
    int[][] answers = new int[5][4];
    for (int i = 0; i < 4; i++) {
      answers[i][i] = 1;
    }
    Problem problem =
        TableOfTests.telling(new double[] {.50, .30, .15, .05, 0}, answers).priced(10, 2, 4, 1);
    Order order = Orders.cheapest(problem, Patience.ENDLESS);
    assertEquals(9.8, order.weighted(), 1e-9);
    assertTrue(order.exact());
  }

  /** Huffman, Proceedings of the IRE 40(9), 1952: the ensemble of his table I, from memory. */
  @Test
  void codeOfHuffman() {
    double[] ensemble = {.20, .18, .10, .10, .10, .06, .06, .04, .04, .04, .04, .03, .01};
    assertEquals(1, Arrays.stream(ensemble).sum(), 1e-12);
    assertEquals(3.42, Bits.huffman(ensemble, 2), 1e-9);
  }
}
