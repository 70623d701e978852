package io.faultwright.analysis.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.SmallBases;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Chart;
import io.faultwright.model.KnowledgeBase;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ChartAnalysisTest {
  private static final String MACHINES =
      """
      equipment:
        families: { fell: { title: Fell }, tarn: { title: Tarn } }
        models: { F-1: { family: fell }, T-1: { family: tarn } }
      faults:
        a: { title: A }
        b: { title: B }
      """;

  private static ChartReport report(String yaml) {
    KnowledgeBase kb = SmallBases.read(MACHINES + yaml);
    Chart chart = kb.charts().get("c");
    return ChartAnalysis.of(kb, chart, Deadline.NEVER);
  }

  private static List<FindingKind> kinds(ChartReport report) {
    return report.findings().stream().map(Finding::kind).toList();
  }

  private static void isProved(String yaml) {
    ChartReport report = report(yaml);
    assertEquals(List.of(), report.findings());
    assertTrue(report.proved());
  }

  @Test
  void thatAReadingCannotBeTakenCountsOnlyWhereTheSymptomSaysSo() {
    String base =
        """
        readings:
          r: { ask: R, values: yes/no }
        symptoms:
          x:
            title: X
            rules:
              on: { when: { r: yes }, conclude: a, because: B }
              off: { when: { r: no }, conclude: b, because: B }
        charts:
          c:
            symptom: x
            start: s
            steps:
              s:
                check: r
                answers:
                  - { is: yes, conclude: a }
                  - { is: no, conclude: b }
                  - { is: cannot be taken, escalate: hotline }
        """;
    isProved(base);
    ChartReport report =
        report(
            base.replace(
                "      off:",
                "      none: { when: { r: cannot be taken }, conclude: b, because: B }\n      off:"));
    assertEquals(List.of(FindingKind.CHART_DIFFERS), kinds(report));
    assertFalse(report.proved());
  }

  @Test
  void aMissingFigureIsLeftToLimitsMissingAndNothingIsProved() {
    ChartReport report =
        report(
            """
            readings:
              d: { ask: D, unit: °C, range: 0 to 40 }
              p: { ask: P, unit: bar(g), range: 0 to 30 }
            limits:
              p:
                by: [d]
                between: interpolate
                rows: [{ d: 10, high: 10 }, { d: 40, high: 20 }]
            symptoms:
              x:
                title: X
                rules:
                  high: { when: { p: above limits }, conclude: a, because: B }
                  right: { when: { p: within limits }, conclude: b, because: B }
            charts:
              c:
                symptom: x
                start: s
                steps:
                  s:
                    check: p
                    answers: [{ is: above limits, conclude: a }, { is: not above limits, conclude: b }]
            """);
    assertEquals(List.of(), report.findings());
    assertFalse(report.proved());
  }

  private static final String FIRST =
      """
      readings:
        r: { ask: R, values: yes/no }
        q: { ask: Q, values: yes/no }
      symptoms:
        y: { title: Y, rules: { every: { when: {}, conclude: a, because: B } } }
        x:
          title: X
          first: [{ when: { q: yes }, otherwise: y }]
          rules:
            on: { when: { r: yes }, conclude: a, because: B }
            off: { when: { r: no, family: fell }, conclude: b, because: B }
            tarn: { when: { r: no, family: tarn }, conclude: [a, b], because: B }
          together: [[a, b]]
      charts:
        c:
          symptom: x
          applies: { family: fell }
          start: first
          steps:
            first: { check: q, answers: [{ is: yes, next: s }, { is: no, refer: y }] }
            s: { check: r, answers: [{ is: yes, conclude: a }, { is: no, conclude: b }] }
      """;

  @Test
  void whatMustBeRightFirstEndsInItsReferral() {
    isProved(FIRST);
    ChartReport report = report(FIRST.replace("start: first", "start: s"));
    assertEquals(
        List.of(
            FindingKind.CHART_STEP_UNREACHED, FindingKind.CHART_DIFFERS, FindingKind.CHART_DIFFERS),
        kinds(report));
    Finding sent = report.findings().get(1);
    assertTrue(sent.message().endsWith("where the rules say a referral to `y`"), sent.message());
    assertEquals(Optional.empty(), sent.share());
    assertEquals(
        "no",
        sent.witness().orElseThrow().readings().get("q").match(w -> w.id(), n -> "", () -> ""));
  }

  @Test
  void otherEquipmentIsNoneOfItsBusiness() {
    ChartReport report = report(FIRST.replace("    applies: { family: fell }\n", ""));
    assertEquals(List.of(FindingKind.CHART_DIFFERS), kinds(report));
    Finding finding = report.findings().get(0);
    assertTrue(
        finding
            .message()
            .endsWith("ends with fault `b` where the rules say fault `a` and fault `b`"),
        finding.message());
    assertEquals("T-1", finding.witness().orElseThrow().equipment().get("model"));
    isProved(
        FIRST
            .replace("applies: { family: fell }", "applies: { family: tarn }")
            .replace("is: no, conclude: b", "is: no, conclude: [b, a]"));
  }

  @Test
  void aReadingThatAMachineLacksIsADeadEnd() {
    ChartReport report =
        report(
            """
            readings:
              r: { ask: R, values: yes/no, applies: { family: fell } }
            symptoms:
              x:
                title: X
                rules:
                  tarn: { when: { family: tarn }, conclude: a, because: B }
                  fell: { when: { family: fell }, conclude: a, because: B }
            charts:
              c:
                symptom: x
                start: s
                steps: { s: { check: r, answers: [{ is: [yes, no], conclude: a }] } }
            """);
    assertEquals(List.of(FindingKind.CHART_ANSWER_MISSING), kinds(report));
    assertEquals("T-1", report.findings().get(0).witness().orElseThrow().equipment().get("model"));
  }

  @Test
  void aDifferenceIsFollowedWithWhatItIsComputedFrom() {
    isProved(
        """
        readings:
          w: { ask: W, unit: °C, range: 0 to 10 }
          k: { ask: K, unit: °C, range: 0 to 10 }
          gap: { difference: [w, k] }
        symptoms:
          x:
            title: X
            rules:
              far: { when: { gap: above 8 K }, conclude: a, because: B }
              near: { when: { gap: at most 8 K }, conclude: b, because: B }
        charts:
          c:
            symptom: x
            start: warm
            steps:
              warm: { check: w, answers: [{ is: at most 8 °C, conclude: b }, { is: above 8 °C, next: cold }] }
              cold: { check: k, answers: [{ is: at least 2 °C, conclude: b }, { is: below 2 °C, next: both }] }
              both: { check: gap, answers: [{ is: above 8 K, conclude: a }, { is: at most 8 K, conclude: b }] }
        """);
  }

  @Test
  void nothingPossibleIsNoProof() {
    ChartReport report =
        report(
            """
            readings:
              r: { ask: R, values: yes/no }
            never: { n: { when: { r: [yes, no] }, because: B } }
            symptoms:
              x: { title: X, rules: { on: { when: { r: yes }, conclude: a, because: B } } }
            charts:
              c: { symptom: x, start: s, steps: { s: { check: r, answers: [{ is: yes, conclude: a }] } } }
            """);
    assertEquals(List.of(FindingKind.CHART_STEP_UNREACHED), kinds(report));
    assertFalse(report.proved());
  }

  /** Twelve values that are wrong in a stretch of their own cannot be said in few regions. */
  @Test
  void whatManyRegionsLeaveIsOneFindingMore() {
    StringBuilder values = new StringBuilder("v0");
    for (int i = 1; i < 20; i++) {
      values.append(", v").append(i);
    }
    ChartReport report =
        report(
            """
            readings:
              r: { ask: R, values: [VALUES] }
              q: { ask: Q, unit: K, range: 0 to 100 }
            symptoms:
              x:
                title: X
                rules:
                  RULES
                  other: { when: { not: { any: [ANY] } }, conclude: b, because: B }
            charts:
              c: { symptom: x, start: s, steps: { s: { check: r, answers: [{ is: [VALUES], conclude: b }] } } }
            """
                .replace("VALUES", values)
                .replace("RULES", rules())
                .replace("ANY", pairs()));
    assertEquals(9, report.findings().size());
    Finding rest = report.findings().get(8);
    assertTrue(rest.message().contains("in many more situations"), rest.message());
    assertEquals(List.of(), rest.region());
    assertTrue(rest.witness().isPresent());
  }

  /** Twelve pairs of a value and a stretch, no two of which lie in one box. */
  private static String pairs() {
    StringBuilder pairs = new StringBuilder();
    for (int i = 0; i < 12; i++) {
      pairs.append(i == 0 ? "" : ", ").append("{ r: v").append(i);
      pairs.append(", q: ").append(5 * i).append(" to ").append(5 * i + 2).append(" }");
    }
    return pairs.toString();
  }

  private static String rules() {
    return "odd: { when: { any: [" + pairs() + "] }, conclude: a, because: B }";
  }
}
