package io.faultwright.analysis.coverage;

import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.SymptomBuilder.symptom;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Answer;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Cases that come out otherwise, and rules that none of them fires. */
class CaseAnalysisTest {
  private static final Situation GIVEN =
      new Situation(new TreeMap<>(), new TreeMap<>(Map.of("p", new Value.Word("yes"))));

  private final KnowledgeBase knowledge =
      new KnowledgeBaseBuilder()
          .model("A-1", "alpha", Map.of())
          .yesNo("p")
          .symptom(
              symptom("x").concludes("r1", is("p", "yes"), "a").concludes("r2", is("p", "no"), "b"))
          .symptom(symptom("y").concludes("r1", is("p", "yes"), "a"))
          .recorded("one", "x", GIVEN, new Answer.OfFault("a"))
          .recorded(
              "two",
              "x",
              GIVEN,
              new Answer.OfFault("b"),
              new Answer.OfReferral("y"),
              new Answer.OfEscalation("hotline"))
          .recorded("three", "x", GIVEN)
          .build();

  private CaseRecord record(String id, boolean passed, String... fired) {
    return new CaseRecord(knowledge.cases().get(id), passed, new TreeSet<>(Set.of(fired)), "`a`");
  }

  private List<Finding> found(FindingKind kind, CaseRecord... records) {
    return CaseAnalysis.findings(knowledge, List.of(records)).stream()
        .filter(finding -> finding.kind() == kind)
        .toList();
  }

  @Test
  void whatWasExpectedAndWhatCameOut() {
    List<Finding> failed =
        found(
            FindingKind.CASE_FAILED,
            record("one", true, "r1"),
            record("two", false, "r1"),
            record("three", false));
    assertEquals(
        List.of(
            "case `two` expects `b` and `refer: y` and `escalate: hotline`, the rules say `a`",
            "case `three` expects `nothing yet`, the rules say `a`"),
        failed.stream().map(Finding::message).toList());
    assertEquals(List.of("r1"), failed.get(0).rules());
    assertEquals(GIVEN, failed.get(0).witness().orElseThrow());
  }

  @Test
  void rulesThatNoCaseOfTheirSymptomFires() {
    List<Finding> untested = found(FindingKind.RULE_UNTESTED, record("one", true, "r1"));
    assertEquals(
        List.of("x r2", "y r1"),
        untested.stream()
            .map(one -> one.symptom().orElseThrow() + " " + one.rules().get(0))
            .toList());
    assertEquals("no case fires rule `r2`", untested.get(0).message());
    assertEquals(3, found(FindingKind.RULE_UNTESTED).size());
  }
}
