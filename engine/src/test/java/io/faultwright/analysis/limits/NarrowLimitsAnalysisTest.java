package io.faultwright.analysis.limits;

import static io.faultwright.analysis.SmallBases.findings;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Limits and stretches against the accuracy of what they are taken with. */
class NarrowLimitsAnalysisTest {
  private static final String BASE =
      """
      readings:
        t: { ask: T, unit: K, range: 0 to 40, accuracy: 1 K, instrument: clamp probe }
        share: { ask: S, unit: bar, range: 0 to 40, accuracy: 10 % of reading }
        below: { ask: B, unit: K, range: -40 to -10, accuracy: 10 % of reading }
        above: { ask: A, unit: K, range: 20 to 40, accuracy: 10 % of reading }
        exact: { ask: E, unit: K, range: 0 to 40 }
        apart: { difference: [t, exact] }
        both: { difference: [above, below] }
      faults:
        a: { title: A, remedy: [Mend it.], verify: [Look.] }
      """;

  private static List<Finding> rule(String when) {
    return findings(
        FindingKind.NARROW_LIMITS,
        BASE
            + "symptoms: { x: { title: X, rules: { r: { when: {"
            + when
            + "}, conclude: a, because: B } } } }\n");
  }

  private static void narrow(String words, String when) {
    assertEquals(List.of(words), rule(when).stream().map(Finding::message).toList());
  }

  private static void wide(String when) {
    assertEquals(List.of(), rule(when));
  }

  @Test
  void aStretchNeedsTwiceTheTolerance() {
    narrow(
        "the stretch of `t`, 4 to 5.9 K, cannot be told: it is taken with `clamp probe` to ±1 K",
        "t: 4 to 5.9 K");
    wide("t: 4 to 6 K");
    wide("exact: 4 to 4.1 K");
  }

  @Test
  void anEndOfTheRangeIsNoEndToJudge() {
    wide("t: 0 to 1 K");
    wide("t: 39 to 40 K");
    wide("t: above 39 K");
    wide("t: below 1 K");
  }

  /** At the middle, 20 bar, a tenth is 2 bar. */
  @Test
  void aToleranceThatGrowsCountsInTheMiddle() {
    assertEquals(1, rule("share: 18.1 to 21.9 bar").size());
    wide("share: 18 to 22 bar");
  }

  /** Of a difference at least what its operands have where they are nearest to zero: 1 and 2 K. */
  @Test
  void whatIsComputedHasTheTolerancesOfItsOperands() {
    assertEquals(1, rule("apart: 4 to 5.9 K").size());
    wide("apart: 4 to 6 K");
    assertEquals(1, rule("both: 40 to 45.9 K").size());
    wide("both: 40 to 46 K");
  }

  @Test
  void eachStretchOnceWhereverItStands() {
    List<Finding> found =
        findings(
            FindingKind.NARROW_LIMITS,
            BASE
                + """
                never: { n: { when: { t: 7 to 8 K }, because: B } }
                symptoms:
                  x:
                    title: X
                    recognise: { t: 3 to 4 K }
                    first: [{ when: { t: 1 to 2 K }, otherwise: y }]
                    never: { n: { when: { t: 9 to 10 K }, because: B } }
                    rules:
                      r1: { when: { t: 5 to 6 K }, conclude: a, because: B }
                      r2: { when: { t: 5 to 6 K }, conclude: a, because: B }
                  y: { title: Y, rules: { r: { when: { share: 20 to 21 bar }, conclude: a, because: B } } }
                """);
    assertEquals(
        List.of("`share`, 20", "`t`, 1", "`t`, 3", "`t`, 5", "`t`, 7", "`t`, 9"),
        found.stream()
            .map(one -> one.message().replaceAll("the stretch of (`.*`, \\d+).*", "$1"))
            .toList());
    assertEquals(2, found.get(3).places().size());
  }

  @Test
  void everyRowOfLimits() {
    List<Finding> found =
        findings(
            FindingKind.NARROW_LIMITS,
            BASE
                + """
                limits:
                  t:
                    by: [exact]
                    between: step
                    rows:
                      - { exact: 0 to 10, low: 2, high: 3.9 }
                      - { exact: 10 to 20, low: 2, high: 4 }
                      - { exact: 20 to 30, low: 2 }
                      - { exact: 30 to 40, low: 7, high: 7 }
                """);
    assertEquals(
        List.of(
            "the limits of `t` here, 2 to 3.9 K, cannot be told: it is taken with `clamp probe` to"
                + " ±1 K",
            "the limits of `t` here, 7 K, cannot be told: it is taken with `clamp probe` to ±1 K"),
        found.stream().map(Finding::message).toList());
  }
}
