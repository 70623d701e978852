package io.faultwright.dmn;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Case;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition;
import io.faultwright.model.Conditions;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.SymptomBuilder;
import io.faultwright.model.Value;
import io.faultwright.resolve.Resolver;
import io.faultwright.run.Runner;
import io.faultwright.syntax.FolderReader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.kie.dmn.api.core.DMNMessage;
import org.kie.dmn.validation.DMNValidator;
import org.kie.dmn.validation.DMNValidatorFactory;

/** The exported decision tables, run by the decision engine of Drools 10.2.0. */
class DmnExportTest {
  private static KnowledgeBase read(String name) {
    return Resolver.resolve(FolderReader.read(Path.of("..", "rules", name)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"walk-in-freezers", "pass-through-dishwashers"})
  void everyCaseComesOutAsTheRulesSay(String name) {
    KnowledgeBase kb = read(name);
    DecisionEngine tables = new DecisionEngine(kb, DmnExport.files(kb));
    for (Symptom symptom : kb.symptoms().values()) {
      assertEquals(List.of(), tables.complaints(symptom.id()), symptom.id());
    }
    Runner rules = new Runner(kb, RuleCompiler.compile(kb));
    List<String> differences = new ArrayList<>();
    int compared = 0;
    for (Case recorded : kb.cases().values()) {
      for (Situation situation : parts(recorded)) {
        String expected = DecisionEngine.expected(rules.verdict(recorded.symptom(), situation));
        String actual = tables.told(recorded.symptom(), situation);
        compared++;
        if (!expected.equals(actual)) {
          differences.add(recorded.id() + ": " + expected + " <> " + actual + " at " + situation);
        }
      }
    }
    assertEquals(List.of(), differences.stream().limit(5).toList(), differences.size() + " differ");
    assertTrue(compared > kb.cases().size(), compared + " compared");
  }

  /** The situation of a case; of every fourth also what is left where some were not taken. */
  private static List<Situation> parts(Case recorded) {
    Random random = new Random(recorded.id().hashCode());
    if (random.nextInt(4) != 0) {
      return List.of(recorded.given());
    }
    SortedMap<String, Value> fewer = new TreeMap<>(recorded.given().readings());
    fewer.keySet().removeIf(reading -> random.nextInt(4) == 0);
    return List.of(recorded.given(), new Situation(recorded.given().equipment(), fewer));
  }

  /**
   * A judge from outside of the files as such: the schema of OMG, and the rules of the standard.
   */
  @Test
  void filesAreValid() {
    KnowledgeBase kb = read("pass-through-dishwashers");
    for (byte[] file : DmnExport.files(kb).values()) {
      StringReader text = new StringReader(new String(file, StandardCharsets.UTF_8));
      List<String> wrong =
          DMNValidatorFactory.newValidator()
              .validate(
                  text,
                  DMNValidator.Validation.VALIDATE_SCHEMA,
                  DMNValidator.Validation.VALIDATE_MODEL,
                  DMNValidator.Validation.VALIDATE_COMPILATION)
              .stream()
              .map(DMNMessage::getText)
              .toList();
      assertEquals(List.of(), wrong);
    }
  }

  /** What a trainer wrote is told as it was written, whatever it looks like. */
  @Test
  void textsAreNeverExpressions() {
    String hostile = "\"] + [now()] // \\u0041 \u2028 <b>&amp;{1+1}\t'";
    KnowledgeBase kb =
        new KnowledgeBaseBuilder()
            .model("m", "f", Map.of(), "1.0")
            .choice("ice", "untouched", "loose")
            .symptom(
                SymptomBuilder.symptom("ice-left")
                    .rule("ask", Conditions.is("ice", "loose"), new Conclusion.Escalate(hostile)))
            .build();
    DecisionEngine tables = new DecisionEngine(kb, DmnExport.files(kb));
    Situation loose =
        new Situation(
            new TreeMap<>(Map.of("model", "m", "software", "1.0")),
            new TreeMap<>(Map.of("ice", new Value.Word("loose"))));
    Map<String, Object> told = tables.decide("ice-left", loose);
    assertEquals(List.of(), told.get("messages"));
    assertEquals(List.of("escalate: " + hostile), told.get("answers"));
  }

  /** Ids that FEEL would take for a number, a word of its own or a difference. */
  @Test
  void anyIdMakesAName() {
    List<String> ids = List.of("3-phase", "date", "if-then", "in-or-out", "null", "a-b", "texts");
    KnowledgeBaseBuilder base = new KnowledgeBaseBuilder().model("m", "f", Map.of(), "1.0");
    SymptomBuilder symptom = SymptomBuilder.symptom("count");
    SortedMap<String, Value> readings = new TreeMap<>();
    for (String id : ids) {
      base.choice(id, "true", "other");
      readings.put(id, new Value.Word("true"));
    }
    Condition all = Conditions.all(ids.stream().map(DmnExportTest::is).toArray(Condition[]::new));
    base.symptom(symptom.rule("ask", all, new Conclusion.Escalate("hotline")));
    Situation given =
        new Situation(new TreeMap<>(Map.of("model", "m", "software", "1.0")), readings);
    assertEquals(
        "answered [escalate: hotline]", DecisionEngine.of(base.build()).told("count", given));
    readings.put("date", new Value.Word("other"));
    assertEquals(
        "nothing yet []",
        DecisionEngine.of(base.build()).told("count", new Situation(given.equipment(), readings)));
  }

  private static Condition is(String id) {
    return Conditions.is(id, "true");
  }

  @Test
  void theSameRulesGiveTheSameBytes() {
    KnowledgeBase kb = read("pass-through-dishwashers");
    SortedMap<String, byte[]> once = DmnExport.files(kb);
    SortedMap<String, byte[]> again = DmnExport.files(read("pass-through-dishwashers"));
    assertEquals(once.keySet(), again.keySet());
    once.forEach((name, content) -> assertArrayEquals(content, again.get(name)));
  }
}
