package io.faultwright.analysis.gap;

import static io.faultwright.analysis.SmallBases.findings;
import static io.faultwright.analysis.SmallBases.rules;
import static io.faultwright.model.Conditions.all;
import static io.faultwright.model.Conditions.is;
import static io.faultwright.model.Conditions.not;
import static io.faultwright.model.SymptomBuilder.symptom;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.SmallBases;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.RegionTest;
import io.faultwright.finding.Share;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.SymptomBuilder;
import io.faultwright.model.Value;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What no rule answers, the largest regions first. */
class GapAnalysisTest {
  private static final String LIMITED =
      """
      equipment:
        families: { fell: { title: Fell }, tarn: { title: Tarn } }
        models:
          F-1: { family: fell, options: {} }
          T-1: { family: tarn, options: {} }
      limits:
        m: { by: [family], rows: [{ family: fell, low: 2, high: 4 }] }
      """
          + SmallBases.READINGS.replace(
              "faults:", "  m: { ask: M, unit: K, range: 0 to 9 }\nfaults:");

  /** Of twelve situations four lack an answer where p and q do not hold, one where they do. */
  @Test
  void eachRegionWithItsShareAndAWitness() {
    String yaml =
        rules(
            "    rules:",
            "      r1: { when: { p: yes, s: not lo }, conclude: a, because: So. }",
            "      r2: { when: { q: yes, s: not hi }, conclude: a, because: So. }");
    List<Finding> gaps = findings(FindingKind.GAP, yaml);
    assertEquals(
        List.of(
            "no rule answers where `p: no` and `q: no`",
            "no rule answers where `s: lo` and `q: no`",
            "no rule answers where `s: hi` and `p: no`"),
        gaps.stream().map(Finding::message).toList());
    assertEquals(
        List.of(new RegionTest("p", "no"), new RegionTest("q", "no")), gaps.get(0).region());
    assertEquals(Optional.of(new Share(0.25, 0.25, true)), gaps.get(0).share());
    assertEquals(new Value.Word("lo"), gaps.get(1).witness().orElseThrow().readings().get("s"));
    KnowledgeBase knowledge = SmallBases.read(yaml);
    SymptomSpace space = SymptomSpace.of(knowledge, knowledge.symptoms().get("x"));
    assertEquals(5.0 / 12, GapAnalysis.share(space).low(), 1e-8);
  }

  @Test
  void noGapWhereEverythingIsAnsweredOrSentElsewhere() {
    assertEquals(
        List.of(),
        findings(
            FindingKind.GAP,
            rules(
                "    first: [{ when: { p: yes }, otherwise: y }]",
                "    never: { n: { when: { q: no }, because: So. } }",
                "    rules:",
                "      r1: { when: { q: yes }, conclude: a, because: So. }",
                "  y: { title: Y, rules: { r: { when: {}, conclude: c, because: So. } } }")));
  }

  /** On tarn there are no limits: that is a missing figure, and no gap. */
  @Test
  void aMissingFigureIsNoGap() {
    String yaml =
        LIMITED
            + """
            symptoms:
              x:
                title: X
                rules:
                  r1: { when: { m: not below limits, p: yes }, conclude: a, because: So. }
                  r2: { when: { m: below limits, p: yes }, conclude: b, because: So. }
                  r3: { when: { p: no, q: yes }, conclude: b, because: So. }
            """;
    assertEquals(
        List.of("no rule answers where `p: no` and `q: no`"),
        findings(FindingKind.GAP, yaml).stream().map(Finding::message).toList());
    List<Finding> missing = findings(FindingKind.LIMITS_MISSING, yaml);
    assertEquals(
        List.of("the limits of `m` have no row where `family: tarn` and `p: yes`"),
        missing.stream().map(Finding::message).toList());
    assertEquals(Map.of("model", "T-1"), missing.get(0).witness().orElseThrow().equipment());
    KnowledgeBase knowledge = SmallBases.read(yaml);
    Share share = GapAnalysis.share(SymptomSpace.of(knowledge, knowledge.symptoms().get("x")));
    assertTrue(share.exact() && share.low() > 0 && share.low() < 0.5, share::toString);
  }

  /** Each of the 110 values of s lacks an answer for just one value of t. */
  @Test
  void moreRegionsThanAPersonReads() {
    String[] values = IntStream.range(100, 210).mapToObj(i -> "v" + i).toArray(String[]::new);
    SymptomBuilder symptom = symptom("x");
    for (String value : values) {
      symptom.concludes("r-" + value, all(is("s", value), not(is("t", value))), "a");
    }
    KnowledgeBase knowledge =
        new KnowledgeBaseBuilder()
            .model("A-1", "alpha", Map.of())
            .choice("s", values)
            .choice("t", values)
            .symptom(symptom)
            .build();
    List<Finding> gaps =
        GapAnalysis.findings(SymptomSpace.of(knowledge, knowledge.symptoms().get("x")));
    assertEquals(101, gaps.size());
    Finding rest = gaps.get(100);
    assertEquals(
        "no rule answers many more situations; their regions show once the larger ones are closed",
        rest.message());
    assertEquals(List.of(), rest.region());
    assertEquals(10.0 / 12_100, rest.share().orElseThrow().low(), 1e-9);
    Map<String, Value> witness = rest.witness().orElseThrow().readings();
    assertEquals(witness.get("s"), witness.get("t"));
  }
}
