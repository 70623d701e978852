package io.faultwright.analysis.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.ambiguity.Prospect;
import io.faultwright.ambiguity.Prospect.Step;
import io.faultwright.analysis.ambiguity.CaseProspect;
import io.faultwright.model.KnowledgeBase;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The next reading against Pattipati and Alexandridis, "Application of heuristic search and
 * information theory to sequential fault diagnosis", IEEE Trans. Systems, Man, and Cybernetics
 * 20(4):872-887, 1990: six states, five tests of unit cost, optimal expected cost 2.18. The table
 * is from memory; its optimum was computed by exact dynamic programming and is the published one.
 */
class OrderOfTestsTest {
  private static final double OPTIMUM = 2.18;
  private static final double GREEDY = 2.86;

  /** Entropy of the six probabilities, and the cost of a Huffman code of them. */
  private static final double ENTROPY = 1.4549;

  private static final double HUFFMAN = 1.59;

  private final KnowledgeBase knowledge = Published.read("order-of-tests");
  private final Prospect prospect =
      CaseProspect.of(Published.space(knowledge), knowledge.cases().get("nothing-known"))
          .orElseThrow();

  @Test
  void theBestFirstTestReachesThePublishedOptimum() {
    assertEquals(OPTIMUM, expected(prospect.steps().get(0)), 1e-9);
  }

  /** What tells most at first, test 1, leads to what the pure rule of information costs. */
  @Test
  void informationAloneWouldCostMore() {
    Step telling = prospect.steps().stream().max(Comparator.comparing(Step::bits)).orElseThrow();
    assertEquals("t1", telling.reading());
    assertEquals(GREEDY, expected(telling), 1e-9);
  }

  @Test
  void everyFirstTestHasItsCost() {
    Map<String, Double> costs =
        prospect.steps().stream()
            .collect(Collectors.toMap(Step::reading, OrderOfTestsTest::expected));
    assertEquals(Map.of("t1", 2.86, "t2", 2.18, "t3", 2.86, "t4", 2.18, "t5", 2.89), costs);
  }

  /** Entropy, Huffman, Proc. IRE 40(9), 1952, optimum: in this order for tests of unit cost. */
  @Test
  void noStepIsCheaperThanTheBounds() {
    assertTrue(
        prospect.steps().stream()
            .allMatch(step -> expected(step) >= HUFFMAN && HUFFMAN >= ENTROPY));
  }

  @Test
  void everyStateIsAsLikelyAsPublished() {
    assertEquals(
        List.of("s0 0.7", "s5 0.12", "s3 0.1", "s4 0.05", "s2 0.02", "s1 0.01"),
        prospect.open().stream()
            .map(open -> open.answers().first().name() + " " + open.likelihood())
            .toList());
  }

  private static double expected(Step step) {
    return step.expected().orElseThrow().weighted();
  }
}
