package io.faultwright.analysis.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.space.RulePair;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.RegionTest;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolver;
import io.faultwright.review.Region;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RuleRegionsTest {
  private static final String RULES =
      """
      handbook:
        title: T
        maker: Brantmoor Cold
        revision: "1"
        date: 2026-03-02
        language: en
        disclaimer: D
      readings:
        fan: { ask: "Does the fan run?", values: yes/no }
        ice: { ask: "How is the ice?", values: [loose, fast] }
        amps: { ask: "What does it draw?", unit: A, range: 0 to 5 }
      faults:
        a: { title: A, remedy: [Look.], verify: [Look.] }
        b: { title: B, remedy: [Look.], verify: [Look.] }
      symptoms:
        warm:
          title: Warm
          together: [[a, b]]
          never:
            draws: { when: { fan: no, amps: above 1 A }, because: It stands. }
          rules:
            stands: { when: { fan: no }, conclude: a, because: So. }
            fast: { when: { ice: fast, amps: above 2 A }, conclude: b, because: So. }
            either: { when: { any: [{ fan: no }, { ice: fast }] }, conclude: a, because: So. }
            silent: { when: { fan: no, amps: above 3 A }, conclude: b, because: So. }
      """;

  private static final KnowledgeBase KB =
      Resolver.resolve(new Sources(List.of(SourceFile.of("handbook.yaml", RULES))));

  private final RuleRegions regions =
      new RuleRegions(SymptomSpace.of(KB, KB.symptoms().get("warm")));

  private static List<RegionTest> tests(String... readingThenValue) {
    return IntStream.range(0, readingThenValue.length / 2)
        .mapToObj(i -> new RegionTest(readingThenValue[2 * i], readingThenValue[2 * i + 1]))
        .toList();
  }

  @Test
  void aRuleAnswersWhereItsConditionsHold() {
    assertEquals(new Region(List.of(tests("fan", "no")), true), regions.of("stands"));
    assertEquals(2, regions.of("either").boxes().size());
    assertTrue(regions.of("either").boxes().contains(tests("ice", "fast")));
    assertTrue(regions.of("either").boxes().contains(tests("fan", "no")));
  }

  @Test
  void aRuleThatCannotFireAnswersNowhere() {
    assertEquals(new Region(List.of(), true), regions.of("silent"));
  }

  @Test
  void anOverlapIsWhereBothAnswer() {
    Region both = regions.of(new RulePair("either", "stands"));
    assertEquals(List.of(tests("fan", "no")), both.boxes());
  }
}
