package io.faultwright.analysis.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.SmallBases;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.RegionTest;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.source.Place;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Ways that lead back, and steps that nothing leads to. */
class CirclesTest {
  private static List<Finding> findings(FindingKind kind, String... steps) {
    String chart =
        "charts:\n  c:\n    symptom: x\n    start: in\n    steps:\n" + String.join("\n", steps);
    KnowledgeBase kb =
        SmallBases.read(
            SmallBases.rules("    rules: { r: { when: {}, conclude: a, because: B } }") + chart);
    return ChartAnalysis.of(kb, kb.charts().get("c"), Deadline.NEVER).findings().stream()
        .filter(finding -> finding.kind() == kind)
        .toList();
  }

  @Test
  void whoGoesRoundIsShownOnTheCircleAlone() {
    List<Finding> found =
        findings(
            FindingKind.CHART_LOOP,
            "      right: { check: s, answers: [{ is: lo, next: left }, { is: ok, next: in },"
                + " { is: hi, conclude: a }] }",
            "      in: { check: p, answers: [{ is: yes, next: left }, { is: no, conclude: a }] }",
            "      left: { check: q, answers: [{ is: yes, next: right }, { is: no, conclude: a }] }");
    assertEquals(1, found.size());
    Finding loop = found.get(0);
    assertEquals("the chart `c` leads back: `right` → `left` → `right`", loop.message());
    assertEquals(
        Set.of(new RegionTest("p", "yes"), new RegionTest("q", "yes"), new RegionTest("s", "lo")),
        Set.copyOf(loop.region()));
    List<Integer> lines = loop.places().stream().map(Place::line).toList();
    assertEquals(2, lines.size());
    assertEquals(lines.get(0) + 2, lines.get(1));
    String witness = loop.witness().orElseThrow().readings().toString();
    assertTrue(witness.contains("p=Word[id=yes]"), witness);
    assertTrue(witness.contains("q=Word[id=yes]"), witness);
    assertTrue(witness.contains("s=Word[id=lo]"), witness);
  }

  @Test
  void anArrowBackThatNobodyTakesIsShownByItsStepsAlone() {
    List<Finding> found =
        findings(
            FindingKind.CHART_LOOP,
            "      in: { check: p, answers: [{ is: yes, next: on }, { is: no, conclude: a }] }",
            "      on: { check: p, answers: [{ is: no, next: in }, { is: yes, next: out }] }",
            "      out: { check: q, answers: [{ is: [yes, no], conclude: a }] }");
    assertEquals(1, found.size());
    assertEquals("the chart `c` leads back: `in` → `on` → `in`", found.get(0).message());
    assertTrue(found.get(0).witness().isEmpty());
    assertEquals(List.of(), found.get(0).region());
  }

  @Test
  void circlesWithoutAStepInCommonAreToldApart() {
    List<Finding> found =
        findings(
            FindingKind.CHART_LOOP,
            "      in: { check: p, answers: [{ is: yes, next: in }, { is: no, next: on }] }",
            "      on: { check: q, answers: [{ is: yes, next: back }, { is: no, conclude: a }] }",
            "      back: { check: s, answers: [{ is: lo, next: on }, { is: not lo, conclude: a }] }");
    assertEquals(
        List.of(
            "the chart `c` leads back: `on` → `back` → `on`",
            "the chart `c` leads back: `in` → `in`"),
        found.stream().map(Finding::message).toList());
  }

  @Test
  void aStepIsUnreachedForOneOfTwoReasons() {
    List<Finding> found =
        findings(
            FindingKind.CHART_STEP_UNREACHED,
            "      in: { check: p, answers: [{ is: yes, next: on }, { is: no, conclude: a }] }",
            "      on: { check: p, answers: [{ is: no, next: never }, { is: yes, conclude: a }] }",
            "      never: { check: q, answers: [{ is: [yes, no], conclude: a }] }",
            "      spare: { check: q, answers: [{ is: [yes, no], conclude: a }] }");
    assertEquals(
        List.of(
            "no possible situation comes to step `never` of the chart `c`",
            "no answer leads to step `spare` of the chart `c`"),
        found.stream().map(Finding::message).toList());
  }
}
