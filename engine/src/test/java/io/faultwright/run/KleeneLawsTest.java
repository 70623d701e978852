package io.faultwright.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Situation;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws of three-valued rules, over random rules and situations. */
class KleeneLawsTest {
  private static final int RULES = 60;
  private static final int SITUATIONS = 120;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void droolsAgreesWithADirectReading(long seed) {
    RandomWorld world = new RandomWorld(seed);
    KnowledgeBase base = world.base(RULES);
    Runner runner = new Runner(base, RuleCompiler.compile(base));
    forSituations(
        world,
        situation -> {
          Trace trace = runner.run(RandomWorld.SYMPTOM, situation);
          DirectTruth direct = new DirectTruth(base, situation);
          for (Rule rule : base.symptoms().get(RandomWorld.SYMPTOM).rules().values()) {
            assertEquals(
                direct.of(rule.when()), truth(trace, rule.id()), rule + " in " + situation);
          }
        });
  }

  @Test
  void everyTruthOccursOften() {
    RandomWorld world = new RandomWorld(1);
    KnowledgeBase base = world.base(RULES);
    Runner runner = new Runner(base, RuleCompiler.compile(base));
    List<Double> seen = new ArrayList<>();
    forSituations(
        world,
        situation -> {
          Trace trace = runner.run(RandomWorld.SYMPTOM, situation);
          trace.rules().keySet().forEach(rule -> seen.add(truth(trace, rule)));
        });
    for (double truth : new double[] {DirectTruth.FALSE, DirectTruth.UNKNOWN, DirectTruth.TRUE}) {
      assertTrue(Collections.frequency(seen, truth) > seen.size() / 10, truth + " is rare");
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14})
  void whatIsDecidedStaysDecidedAsReadingsAreAdded(long seed) {
    RandomWorld world = new RandomWorld(seed);
    KnowledgeBase base = world.base(RULES);
    Runner runner = new Runner(base, RuleCompiler.compile(base));
    forSituations(
        world,
        situation -> {
          Trace before = runner.run(RandomWorld.SYMPTOM, situation);
          for (Situation more : List.of(world.extended(situation), world.completed(situation))) {
            assertKeeps(before, runner.run(RandomWorld.SYMPTOM, more));
          }
        });
  }

  private static void assertKeeps(Trace before, Trace after) {
    assertTrue(after.answers().containsAll(before.answers()));
    assertTrue(after.fired().containsAll(before.fired()));
    assertTrue(after.ruledOut().containsAll(before.ruledOut()));
    before.rules().keySet().stream()
        .filter(rule -> truth(before, rule) != DirectTruth.UNKNOWN)
        .forEach(rule -> assertEquals(truth(before, rule), truth(after, rule), rule));
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22})
  void everyFaultIsConcludedPossibleOrRuledOut(long seed) {
    RandomWorld world = new RandomWorld(seed);
    KnowledgeBase base = world.base(RULES);
    Runner runner = new Runner(base, RuleCompiler.compile(base));
    forSituations(
        world,
        situation -> {
          Trace trace = runner.run(RandomWorld.SYMPTOM, situation);
          assertEquals(
              RULES,
              trace.answers().size() + trace.stillPossible().size() + trace.ruledOut().size());
        });
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32})
  void theVerdictIsThatOfTheTraceAndAlwaysTheSame(long seed) {
    RandomWorld world = new RandomWorld(seed);
    KnowledgeBase base = world.base(RULES);
    Runner runner = new Runner(base, RuleCompiler.compile(base));
    Runner another = new Runner(base, RuleCompiler.compile(base));
    forSituations(
        world,
        situation -> {
          Trace trace = runner.run(RandomWorld.SYMPTOM, situation);
          assertEquals(trace.verdict(), runner.verdict(RandomWorld.SYMPTOM, situation));
          assertEquals(trace, another.run(RandomWorld.SYMPTOM, situation));
        });
  }

  @ParameterizedTest
  @ValueSource(longs = {41, 42, 43, 44})
  void withRulesInsteadOfOthersMoreReadingsNeverTakeAnAnswerBack(long seed) {
    RandomWorld world = new RandomWorld(seed);
    KnowledgeBase base = world.layeredBase(RULES);
    Runner runner = new Runner(base, RuleCompiler.compile(base));
    forSituations(
        world,
        situation -> {
          Trace before = runner.run(RandomWorld.SYMPTOM, situation);
          for (Situation more : List.of(world.extended(situation), world.completed(situation))) {
            Trace after = runner.run(RandomWorld.SYMPTOM, more);
            assertTrue(after.answers().containsAll(before.answers()));
            assertTrue(after.ruledOut().containsAll(before.ruledOut()));
            assertTrue(before.stillPossible().containsAll(after.stillPossible()));
          }
        });
  }

  @ParameterizedTest
  @ValueSource(longs = {51, 52, 53, 54})
  void aRuleFiresWhereItHoldsAndNoneMayStandInsteadOfIt(long seed) {
    RandomWorld world = new RandomWorld(seed);
    KnowledgeBase base = world.layeredBase(RULES);
    Runner runner = new Runner(base, RuleCompiler.compile(base));
    Collection<Rule> rules = base.symptoms().get(RandomWorld.SYMPTOM).rules().values();
    forSituations(
        world,
        situation -> {
          DirectTruth direct = new DirectTruth(base, situation);
          Set<String> expected =
              rules.stream()
                  .filter(rule -> direct.of(rule.when()) == DirectTruth.TRUE)
                  .filter(rule -> rules.stream().allMatch(other -> yields(other, rule, direct)))
                  .map(Rule::id)
                  .collect(Collectors.toSet());
          assertEquals(expected, runner.run(RandomWorld.SYMPTOM, situation).fired());
        });
  }

  private static boolean yields(Rule other, Rule rule, DirectTruth direct) {
    return !other.insteadOf().contains(rule.id()) || direct.of(other.when()) == DirectTruth.FALSE;
  }

  private static void forSituations(RandomWorld world, Consumer<Situation> law) {
    for (int i = 0; i < SITUATIONS; i++) {
      law.accept(world.situation());
    }
  }

  private static double truth(Trace trace, String rule) {
    return trace
        .rules()
        .get(rule)
        .match(
            fired -> DirectTruth.TRUE,
            silenced -> {
              throw new AssertionError("no rule stands instead of another here");
            },
            couldFire -> DirectTruth.UNKNOWN,
            cannotFire -> DirectTruth.FALSE);
  }
}
