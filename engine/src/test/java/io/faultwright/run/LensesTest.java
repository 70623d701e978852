package io.faultwright.run;

import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.SituationBuilder.situation;
import static io.faultwright.model.SymptomBuilder.symptom;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Answer;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.Situation;
import io.faultwright.model.SymptomBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The contact lens data: J. Cendrowska, "PRISM: An algorithm for inducing modular rules", Int. J.
 * Man-Machine Studies 27:349-370, 1987, nine rules over all 24 combinations ("complete and
 * correct"). Rows 1-21 were read, rows 22-24 and the rule texts are from memory; counts of rows and
 * overlaps were computed by brute force from rows and rules.
 */
class LensesTest {
  private static final List<String> AGES = List.of("young", "pre-presbyopic", "presbyopic");
  private static final List<String> PRESCRIPTIONS = List.of("myope", "hypermetrope");
  private static final List<String> YES_NO = List.of("no", "yes");
  private static final List<String> TEARS = List.of("reduced", "normal");
  private static final List<String> PUBLISHED =
      List.of(
          ("none soft none hard none soft none hard none soft none hard none soft none none"
                  + " none none none hard none soft none none")
              .split(" "));

  private final KnowledgeBase base = base();
  private final Runner runner = new Runner(base, RuleCompiler.compile(base));

  @Test
  void everyRowGetsItsPublishedLens() {
    List<String> found = rows().stream().map(this::answer).toList();
    assertEquals(PUBLISHED, found);
  }

  @Test
  void noRowIsContradictory() {
    rows().forEach(row -> assertFalse(runner.run("lens", row).contradictory()));
  }

  @Test
  void everyRuleFiresOnItsRows() {
    Map<String, Integer> counts = new TreeMap<>();
    rows().forEach(row -> fired(row).forEach(rule -> counts.merge(rule, 1, Integer::sum)));
    assertEquals(List.of(2, 2, 3, 3, 2, 12, 2, 2, 2), List.copyOf(counts.values()));
  }

  @Test
  void exactlySixPairsOfRulesOverlap() {
    Set<String> pairs = new TreeSet<>();
    for (Situation row : rows()) {
      List<String> fired = List.copyOf(fired(row));
      IntStream.range(1, fired.size()).forEach(i -> pairs.add(fired.get(0) + " " + fired.get(i)));
    }
    assertEquals(Set.of("r1 r3", "r2 r3", "r4 r5", "r6 r7", "r6 r8", "r6 r9"), pairs);
  }

  @Test
  void withTearsReducedAloneTheAnswerIsKnown() {
    Trace trace = runner.run("lens", situation().word("tears", "reduced").build());
    assertEquals(Set.of(new Answer.OfFault("none")), trace.answers());
    assertEquals(Set.of("hard", "soft"), trace.ruledOut());
  }

  private String answer(Situation row) {
    return runner.verdict("lens", row).answers().stream()
        .map(Answer::name)
        .collect(Collectors.joining(" "));
  }

  private Set<String> fired(Situation row) {
    return runner.run("lens", row).fired();
  }

  private static List<Situation> rows() {
    List<Situation> rows = new ArrayList<>();
    AGES.forEach(
        age ->
            PRESCRIPTIONS.forEach(
                prescription ->
                    YES_NO.forEach(
                        astigmatic ->
                            TEARS.forEach(
                                tears -> rows.add(row(age, prescription, astigmatic, tears))))));
    return rows;
  }

  private static Situation row(String age, String prescription, String astigmatic, String tears) {
    return situation()
        .word("age", age)
        .word("prescription", prescription)
        .word("astigmatic", astigmatic)
        .word("tears", tears)
        .build();
  }

  private static KnowledgeBase base() {
    return new KnowledgeBaseBuilder()
        .model("any", "any-family", Map.of())
        .choice("age", AGES.toArray(String[]::new))
        .choice("prescription", PRESCRIPTIONS.toArray(String[]::new))
        .yesNo("astigmatic")
        .choice("tears", TEARS.toArray(String[]::new))
        .symptom(rules())
        .build();
  }

  private static SymptomBuilder rules() {
    Condition normal = is("tears", "normal");
    Condition round = is("astigmatic", "no");
    Condition astigmatic = is("astigmatic", "yes");
    Condition myope = is("prescription", "myope");
    Condition hypermetrope = is("prescription", "hypermetrope");
    return symptom("lens")
        .concludes("r1", all(is("age", "young"), round, normal), "soft")
        .concludes("r2", all(is("age", "pre-presbyopic"), round, normal), "soft")
        .concludes("r3", all(hypermetrope, round, normal), "soft")
        .concludes("r4", all(myope, astigmatic, normal), "hard")
        .concludes("r5", all(is("age", "young"), astigmatic, normal), "hard")
        .concludes("r6", is("tears", "reduced"), "none")
        .concludes("r7", all(is("age", "presbyopic"), myope, round), "none")
        .concludes("r8", all(is("age", "pre-presbyopic"), hypermetrope, astigmatic), "none")
        .concludes("r9", all(is("age", "presbyopic"), hypermetrope, astigmatic), "none");
  }
}
