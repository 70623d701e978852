package io.faultwright.analysis.suggestion;

import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.any;
import static io.faultwright.model.Conditions.between;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.adequacy.Criterion;
import io.faultwright.adequacy.Suggestion;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.model.Condition;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.SymptomBuilder;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class SuggestionAnalysisTest {
  private static final Condition A = is("a", "yes");
  private static final Condition B = is("b", "yes");
  private static final Condition C = is("c", "yes");
  private static final Condition D = is("d", "yes");

  /**
   * Least numbers of tests for MC/DC (unique cause), by exhaustive search; the definition is that
   * of DO-178C, the tutorial NASA/TM-2001-210876.
   */
  @TestFactory
  List<DynamicTest> theFewestCasesShowThatEachConditionDecides() {
    Map<String, Condition> rules =
        Map.of(
            "3 a and b", all(A, B),
            "3 a or b", any(A, B),
            "4 a and b and c", all(A, B, C),
            "4 a or b or c", any(A, B, C),
            "4 a and (b or c)", all(A, any(B, C)),
            "5 (a and b) or (c and d)", any(all(A, B), all(C, D)),
            "5 (a or b) and (c or d)", all(any(A, B), any(C, D)));
    return rules.entrySet().stream()
        .map(
            rule ->
                DynamicTest.dynamicTest(
                    rule.getKey(),
                    () ->
                        assertEquals(
                            Integer.parseInt(rule.getKey().substring(0, 1)),
                            suggested(oneRule(rule.getValue()), Criterion.MC_DC).size())))
        .toList();
  }

  /** NASA/TM-2001-210876 as above: the vectors themselves are forced for a conjunction. */
  @Test
  void aConjunctionNeedsAllMetAndEachOneMissedAlone() {
    Set<String> vectors = new TreeSet<>();
    for (Suggestion one : suggested(oneRule(all(A, B, C)), Criterion.MC_DC)) {
      StringBuilder vector = new StringBuilder();
      for (String reading : List.of("a", "b", "c")) {
        vector.append(
            new Value.Word("yes").equals(one.given().readings().get(reading)) ? '1' : '0');
      }
      vectors.add(vector.toString());
    }
    assertEquals(Set.of("011", "101", "110", "111"), vectors);
  }

  @Test
  void aConditionThatHangsTogetherWithAnotherIsMasked() {
    KnowledgeBase kb = oneRule(all(not(A), any(A, B)));
    assertEquals(
        3,
        suggested(kb, Criterion.MC_DC).size(),
        "a decides nothing on its own where both of its places move together, b does");
  }

  /** Boundary values of a partition from 1 to 10 (ISO/IEC/IEEE 29119-4:2021). */
  @TestFactory
  List<DynamicTest> boundariesAreTheLastValuesOnEitherSide() {
    return List.of(
        DynamicTest.dynamicTest("two", () -> assertEquals(List.of(0, 1, 10, 11), values(false))),
        DynamicTest.dynamicTest(
            "three", () -> assertEquals(List.of(0, 1, 2, 9, 10, 11), values(true))));
  }

  private static List<Integer> values(boolean three) {
    Interval range = Interval.closed(BigFraction.of(-5), BigFraction.of(20));
    Domain domain =
        new Domain.Measured(Units.find("times").orElseThrow(), range, Optional.of(BigFraction.ONE));
    KnowledgeBase kb =
        new KnowledgeBaseBuilder()
            .model("M-1", "m", Map.of())
            .reading("count", domain)
            .fault("worn")
            .symptom(
                SymptomBuilder.symptom("noise")
                    .concludes("rule", between("count", "1", "10"), "worn"))
            .build();
    return suggestions(kb, Set.of(Criterion.BOUNDARIES), three).stream()
        .map(one -> ((Value.Number) one.given().readings().get("count")).amount().intValue())
        .sorted()
        .toList();
  }

  /**
   * Sizes of pairwise test sets: 3^4 is an orthogonal array; binary ones are exact (Kleitman and
   * Spencer, 1973); the others lie in the ranges of published generators (Czerwonka, PNSQC 2006).
   */
  @TestFactory
  List<DynamicTest> pairsOfReadingsTakeFewCases() {
    return List.of(
        pairs("3^4", 4, 3, 9),
        pairs("2^10", 10, 2, 6),
        pairs("3^13", 13, 3, 18),
        pairs("2^100", 100, 2, 12),
        pairs("10^20", 20, 10, 200));
  }

  private static DynamicTest pairs(String name, int readings, int values, int most) {
    return DynamicTest.dynamicTest(
        name,
        () -> {
          List<Suggestion> cases = suggested(choices(readings, values), Criterion.PAIRS);
          assertTrue(cases.size() <= most, name + ": " + cases.size());
          assertEquals((long) readings * (readings - 1) / 2 * values * values, pairs(cases));
        });
  }

  private static long pairs(List<Suggestion> cases) {
    Set<String> pairs = new TreeSet<>();
    for (Suggestion one : cases) {
      List<String> values = new ArrayList<>();
      one.given().readings().forEach((id, value) -> values.add(id + value));
      for (int i = 0; i < values.size(); i++) {
        for (int j = i + 1; j < values.size(); j++) {
          pairs.add(values.get(i) + values.get(j));
        }
      }
    }
    return pairs.size();
  }

  private static KnowledgeBase choices(int readings, int values) {
    KnowledgeBaseBuilder base = new KnowledgeBaseBuilder().model("M-1", "m", Map.of());
    String[] words =
        IntStream.range(0, values).mapToObj(value -> "v" + value).toArray(String[]::new);
    List<Condition> parts = new ArrayList<>();
    for (int i = 0; i < readings; i++) {
      base.choice("r" + i, words);
      parts.add(is("r" + i, "v0"));
    }
    return base.fault("worn")
        .symptom(
            SymptomBuilder.symptom("noise")
                .concludes("rule", all(parts.toArray(Condition[]::new)), "worn"))
        .build();
  }

  private static KnowledgeBase oneRule(Condition when) {
    KnowledgeBaseBuilder base = new KnowledgeBaseBuilder().model("M-1", "m", Map.of());
    List.of("a", "b", "c", "d").forEach(base::yesNo);
    return base.fault("worn")
        .symptom(SymptomBuilder.symptom("noise").concludes("rule", when, "worn"))
        .build();
  }

  private static List<Suggestion> suggested(KnowledgeBase kb, Criterion only) {
    return suggestions(kb, Set.of(only), false);
  }

  private static List<Suggestion> suggestions(
      KnowledgeBase kb, Set<Criterion> wanted, boolean three) {
    return new SuggestionAnalysis(kb, List.of(), wanted, false, three, Deadline.NEVER)
        .of(kb.symptoms().get("noise"));
  }
}
