package io.faultwright.analysis.contradiction;

import static io.faultwright.analysis.SmallBases.findings;
import static io.faultwright.analysis.SmallBases.rules;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.analysis.SmallBases;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.RegionTest;
import io.faultwright.finding.Share;
import io.faultwright.model.KnowledgeBase;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Answers that exclude each other, in the order of the rules. */
class ContradictionAnalysisTest {
  private static final String TWO_FAULTS = "fire in one situation and give fault `a` and fault `b`";

  private static List<String> found(String... lines) {
    return findings(FindingKind.CONTRADICTION, rules(lines)).stream()
        .map(Finding::message)
        .toList();
  }

  @Test
  void inTheOrderOfTheRules() {
    assertEquals(
        List.of(
            "rules `r1` and `r2` " + TWO_FAULTS,
            "rules `r2` and `r3` fire in one situation and give fault `b` and fault `a`",
            "rule `r4` gives fault `b` and fault `c`"),
        found(
            "    rules:",
            "      r1: { when: { s: lo }, conclude: a, because: So. }",
            "      r2: { when: { s: [lo, ok] }, conclude: b, because: So. }",
            "      r3: { when: { s: ok }, conclude: a, because: So. }",
            "      r4: { when: { s: hi }, conclude: [b, c], because: So. }"));
  }

  @Test
  void notWhereBothMayBePresent() {
    String rules =
        "    rules:\n"
            + "      r1: { when: { p: yes }, conclude: a, because: So. }\n"
            + "      r2: { when: { q: yes }, conclude: b, because: So. }";
    assertEquals(List.of("rules `r1` and `r2` " + TWO_FAULTS), found(rules));
    assertEquals(List.of(), found("    together: [[b, a]]", rules));
    assertEquals(
        List.of("rules `r1` and `r2` " + TWO_FAULTS), found("    together: [[a, c]]", rules));
    assertEquals(
        List.of(), found("    never: { n: { when: { p: yes, q: yes }, because: So. } }", rules));
    assertEquals(
        List.of(),
        found(rules.replace("conclude: b", "conclude: a")),
        "the same answer twice is no contradiction");
  }

  @Test
  void aFaultThatAnotherRuleRulesOut() {
    assertEquals(
        List.of(
            "rules `r1` and `r2` fire in one situation and give fault `a` as present and as ruled"
                + " out"),
        found(
            "    rules:",
            "      r1: { when: { p: yes }, conclude: a, because: So. }",
            "      r2: { when: { q: yes }, exclude: [a, c], because: So. }",
            "      r3: { when: { p: no }, conclude: b, because: So. }"));
    assertEquals(
        1,
        found(
                "    rules:",
                "      r1: { when: { q: yes }, exclude: a, because: So. }",
                "      r2: { when: { p: yes }, conclude: a, because: So. }",
                "      r3: { when: { p: yes }, exclude: b, because: So. }")
            .size(),
        "in either order");
  }

  @Test
  void answersThatAreNoFaults() {
    assertEquals(
        List.of(
            "rules `r1` and `r2` fire in one situation and give fault `a` and an escalation to"
                + " `hotline`",
            "rules `r1` and `r3` fire in one situation and give fault `a` and a referral to `y`",
            "rules `r2` and `r3` fire in one situation and give an escalation to `hotline` and a"
                + " referral to `y`"),
        found(
            "    together: [[a, b]]",
            "    rules:",
            "      r1: { when: { p: yes }, conclude: a, because: So. }",
            "      r2: { when: { p: yes }, escalate: hotline, because: So. }",
            "      r3: { when: { p: yes }, refer: y, because: So. }",
            "  y: { title: Y, rules: { r: { when: {}, conclude: c, because: So. } } }"));
  }

  /** Of twelve situations p and q hold in three. */
  @Test
  void whereAndHowMuch() {
    String yaml =
        rules(
            "    rules:",
            "      r1: { when: { p: yes }, conclude: a, because: So. }",
            "      r2: { when: { q: yes }, conclude: b, because: So. }",
            "      r3: { when: { s: lo, p: no, q: no }, conclude: b, because: So. }");
    Finding finding = findings(FindingKind.CONTRADICTION, yaml).get(0);
    assertEquals(List.of(new RegionTest("p", "yes"), new RegionTest("q", "yes")), finding.region());
    assertEquals(Optional.of(new Share(0.25, 0.25, true)), finding.share());
    assertEquals(List.of("r1", "r2"), finding.rules());
    KnowledgeBase knowledge = SmallBases.read(yaml);
    SymptomSpace space = SymptomSpace.of(knowledge, knowledge.symptoms().get("x"));
    assertEquals(new Share(0.25, 0.25, true), ContradictionAnalysis.share(space));
  }

  @Test
  void whatHelps() {
    List<Finding> findings =
        findings(
            FindingKind.CONTRADICTION,
            rules(
                "    rules:",
                "      r1: { when: { p: yes }, conclude: a, because: So. }",
                "      r2: { when: { p: yes }, conclude: b, because: So. }",
                "      r3: { when: { p: yes }, escalate: hotline, because: So. }"));
    assertEquals(
        "add the reading that separates them, or let one win with `instead-of`, or list"
            + " `together: [[a, b]]` if both can be present",
        findings.get(0).help());
    assertEquals(
        "add the reading that separates them, or let one win with `instead-of`",
        findings.get(1).help());
  }
}
