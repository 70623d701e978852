package io.faultwright.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.analysis.order.Question;
import io.faultwright.analysis.order.Questions;
import io.faultwright.analysis.outcome.Results;
import io.faultwright.analysis.outcome.Separation;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.KnowledgeBase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * A chart against a published table: the 24 cases of fitting contact lenses. J. Cendrowska, "PRISM:
 * An algorithm for inducing modular rules", Int. J. Man-Machine Studies 27 (1987) 349–370; also UCI
 * "Lenses". Rows 1 to 21 were read there; rows 22 to 24 and the wording of the nine rules are from
 * memory.
 */
class ContactLensesTest {
  private static final List<String> AGES = List.of("Young", "Pre-presbyopic", "Presbyopic");
  private static final List<String> PRESCRIPTIONS = List.of("Myope", "Hypermetrope");
  private static final List<String> ANSWERS = List.of("No", "Yes");
  private static final List<String> TEARS = List.of("Reduced", "Normal");

  /** The last column varies fastest. */
  private static final String TABLE =
      """
      none soft none hard none soft none hard
      none soft none hard none soft none none
      none none none hard none soft none none
      """;

  private static final String YAML =
      """
      equipment:
        families: { eye: { title: Eye } }
        models: { E1: { title: E1, family: eye, options: {} } }
      readings:
        age:
          ask: How old?
          values: { young: Young, pre-presbyopic: Pre-presbyopic, presbyopic: Presbyopic }
        prescription: { ask: "Which?", values: { myope: Myope, hypermetrope: Hypermetrope } }
        astigmatism: { ask: "Astigmatic?", values: yes/no }
        tear-rate: { ask: "How much tear?", values: { reduced: Reduced, normal: Normal } }
      faults:
        soft: { title: soft, frequency: 5 }
        hard: { title: hard, frequency: 4 }
        none-fits: { title: none, frequency: 15 }
      symptoms:
        lenses:
          title: Which lenses fit?
          rules:
            r1: { when: { age: young, astigmatism: no, tear-rate: normal }, conclude: soft, because: r }
            r2: { when: { age: pre-presbyopic, astigmatism: no, tear-rate: normal }, conclude: soft, because: r }
            r3: { when: { prescription: hypermetrope, astigmatism: no, tear-rate: normal }, conclude: soft, because: r }
            r4: { when: { prescription: myope, astigmatism: yes, tear-rate: normal }, conclude: hard, because: r }
            r5: { when: { age: young, astigmatism: yes, tear-rate: normal }, conclude: hard, because: r }
            r6: { when: { tear-rate: reduced }, conclude: none-fits, because: r }
            r7: { when: { age: presbyopic, prescription: myope, astigmatism: no }, conclude: none-fits, because: r }
            r8: { when: { age: pre-presbyopic, prescription: hypermetrope, astigmatism: yes }, conclude: none-fits, because: r }
            r9: { when: { age: presbyopic, prescription: hypermetrope, astigmatism: yes }, conclude: none-fits, because: r }
      """;

  private final KnowledgeBase knowledge = Demos.of(YAML);
  private final Flowchart chart =
      ChartBuilder.charts(knowledge, knowledge.symptoms().get("lenses")).get(0).chart();

  @Test
  void everyRowOfTheTableEndsAtItsClass() {
    List<String> ends = new ArrayList<>();
    for (String age : AGES) {
      for (String prescription : PRESCRIPTIONS) {
        for (String astigmatism : ANSWERS) {
          for (String tear : TEARS) {
            ends.add(
                end(
                    Map.of(
                        "age",
                        age,
                        "prescription",
                        prescription,
                        "astigmatism",
                        astigmatism,
                        "tear-rate",
                        tear)));
          }
        }
      }
    }
    assertEquals(List.of(TABLE.strip().split("\\s+")), ends);
  }

  /**
   * Bits that each question tells, as published for this table (tear rate 0.5488, astigmatism
   * 0.3770, prescription 0.0395, age 0.0394: from memory, and computed from the 24 rows by hand);
   * the faults are as frequent as the classes are in the table.
   */
  @Test
  void theTearRateTellsMostAndIsAskedFirst() {
    SymptomSpace space = SymptomSpace.of(knowledge, knowledge.symptoms().get("lenses"));
    Map<String, Double> gains = new TreeMap<>();
    for (Question question : Questions.of(space)) {
      List<Integer> parts =
          question.options().stream()
              .map(option -> space.space().diagrams().literal(question.axis(), option))
              .toList();
      double gain = new Separation(space.space()).gain(space.possible(), parts, Results.of(space));
      gains.put(question.subject(), Math.round(gain * 10_000) / 10_000.0);
    }
    assertEquals(
        Map.of("age", 0.0394, "astigmatism", 0.377, "prescription", 0.0395, "tear-rate", 0.5488),
        gains);
    assertEquals("check.tear-rate", chart.from("start").get(0).to());
  }

  private String end(Map<String, String> person) {
    Node node = chart.target(chart.from("start").get(0));
    while (node instanceof Node.Check check) {
      String given = person.get(check.id().split("\\.")[1]);
      Edge taken =
          chart.from(check.id()).stream()
              .filter(
                  edge ->
                      List.of(edge.answer().toLowerCase(Locale.ROOT).split(" or "))
                          .contains(given.toLowerCase(Locale.ROOT)))
              .findFirst()
              .orElseThrow();
      node = chart.target(taken);
    }
    return ((Node.Outcome) node).title();
  }
}
