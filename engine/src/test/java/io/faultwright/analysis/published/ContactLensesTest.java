package io.faultwright.analysis.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.ambiguity.Distinction;
import io.faultwright.analysis.ambiguity.AmbiguityAnalysis;
import io.faultwright.analysis.contradiction.ContradictionAnalysis;
import io.faultwright.analysis.gap.GapAnalysis;
import io.faultwright.analysis.redundancy.RepeatedRuleAnalysis;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Answer;
import io.faultwright.model.FaultPair;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.run.Runner;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The complete and correct rule set of Cendrowska, "PRISM", International Journal of Man-Machine
 * Studies 27:349-370, 1987, over the 24 rows of the UCI data set "Lenses". Rows 1 to 21 were read;
 * rows 22 to 24 and the rule texts are from memory; every figure below was computed from them by
 * brute force.
 */
class ContactLensesTest {
  private final KnowledgeBase knowledge = Published.read("contact-lenses");
  private final SymptomSpace space = Published.space(knowledge);

  @Test
  void theRulesHaveNoGapNoContradictionAndNoSuperfluousRule() {
    assertEquals(24, rows(space, space.possible()));
    assertEquals(List.of(), GapAnalysis.findings(space));
    assertEquals(List.of(), ContradictionAnalysis.findings(space));
    assertEquals(List.of(), RepeatedRuleAnalysis.findings(space));
  }

  @Test
  void everyRuleFiresInAsManyRowsAsPublished() {
    assertEquals(
        List.of(2, 2, 3, 3, 2, 12, 2, 2, 2),
        rules().map(rule -> rows(space, space.fires("rule-" + rule))).boxed().toList());
  }

  @Test
  void exactlySixPairsOfRulesOverlapInOneRowEach() {
    List<String> pairs = new ArrayList<>();
    for (int i = 1; i <= 9; i++) {
      for (int j = i + 1; j <= 9; j++) {
        int both = rows(space, both("rule-" + i, "rule-" + j));
        if (both > 0) {
          pairs.add(i + "," + j + ":" + both);
        }
      }
    }
    assertEquals(List.of("1,3:1", "2,3:1", "4,5:1", "6,7:1", "6,8:1", "6,9:1"), pairs);
  }

  @Test
  void eachDeletionUncoversAsManyRowsAsPublished() {
    assertEquals(
        List.of(1, 1, 1, 2, 1, 9, 1, 1, 1),
        rules()
            .map(
                rule -> {
                  SymptomSpace fewer = Published.without(knowledge, "rule-" + rule);
                  return rows(fewer, GapAnalysis.gap(fewer));
                })
            .boxed()
            .toList());
  }

  @Test
  void droolsGivesAllTwentyFourRowsTheirClass() {
    Runner runner = new Runner(knowledge, RuleCompiler.compile(knowledge));
    List<String> given =
        IntStream.range(0, 24)
            .mapToObj(row -> runner.run("lenses", LensRows.situation(row)).answers())
            .map(answers -> answers.stream().map(Answer::name).reduce("", String::concat))
            .toList();
    assertEquals(LensRows.classes(), given);
  }

  /**
   * Soft and hard lenses differ by astigmatism alone. What neither suits takes all four readings to
   * know for certain, and no reading can be left out.
   */
  @Test
  void readingsTellTheThreeClassesApart() {
    List<Distinction> pairs = new AmbiguityAnalysis(space).pairs(pair -> true).pairs();
    assertEquals(
        List.of(
            "hard none: age astigmatism prescription tear",
            "hard soft: astigmatism",
            "none soft: age astigmatism prescription tear"),
        pairs.stream()
            .map(
                pair ->
                    pair.faults().one()
                        + " "
                        + pair.faults().other()
                        + ": "
                        + String.join(" ", pair.cheapest().orElseThrow().readings()))
            .toList());
    pairs.forEach(pair -> assertEquals(pair.cheapest().orElseThrow().readings(), pair.needed()));
  }

  /** 7 of the 15 rows without lenses have another astigmatism than hard ones, 12 other tears. */
  @Test
  void singleReadingsSettleAsManyRowsAsCounted() {
    Distinction pair = new AmbiguityAnalysis(space).pairs(all -> true).pairs().get(0);
    assertEquals(FaultPair.of("hard", "none"), pair.faults());
    assertEquals(
        List.of("astigmatism 0.233333333", "tear 0.4"),
        pair.singles().stream().map(one -> one.reading() + " " + one.settles()).toList());
  }

  private int both(String one, String other) {
    return space.space().diagrams().and(space.fires(one), space.fires(other));
  }

  private static int rows(SymptomSpace space, int diagram) {
    int inside = space.space().diagrams().and(diagram, space.possible());
    return space.space().distinguishable(inside).intValueExact();
  }

  private static IntStream rules() {
    return IntStream.rangeClosed(1, 9);
  }
}
