package io.faultwright.analysis.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.chart.ChartAnalysis;
import io.faultwright.analysis.chart.ChartReport;
import io.faultwright.analysis.order.ChartCost.Detour;
import io.faultwright.analysis.order.ChartCost.EarlyHazard;
import io.faultwright.analysis.space.Deadline;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Costs of hand-written charts; every expected figure is worked out by hand beside it. */
class ChartCostsTest {
  private static final double EXACT = 1e-9;

  private static final String HANDBOOK =
      """
      handbook: { title: T, maker: M, revision: "1", date: 2026-03-02, language: en, disclaimer: D. }
      faults:
        iced: { title: Iced up, frequency: 2 }
        dead: { title: Dead, frequency: 1 }
        worn: { title: Worn, frequency: 1 }
      cautions:
        live: { signal: danger, text: Live parts kill., covers: [live-voltage] }
      """;

  /** A minute behind the panel counts 2, one on live voltage 3, unless the handbook says so. */
  private static String readings(String accessOfVoltage) {
    return """
    readings:
      ice: { ask: "Is there ice?", values: yes/no, minutes: 2 }
      voltage: { ask: "Is there voltage?", values: yes/no, minutes: 8, access: ACCESS }
      mood: { ask: "How is the customer?", values: [calm, angry], minutes: 1 }
    """
        .replace("ACCESS", accessOfVoltage);
  }

  private static final String RULES =
      """
      symptoms:
        s:
          title: S
          hazardous-checks: ORDER
          rules:
            ice: { when: { ice: yes }, conclude: iced, because: b }
            none: { when: { ice: no, voltage: no }, conclude: dead, because: b }
            some: { when: { ice: no, voltage: yes }, conclude: worn, because: b }
      """;

  private static final String VOLTAGE_FIRST =
      """
      charts:
        c:
          symptom: s
          start: voltage
          steps:
            voltage:
              check: voltage
              answers: [ { is: yes, next: with }, { is: no, next: without } ]
            with:
              check: ice
              answers: [ { is: yes, conclude: iced }, { is: no, conclude: worn } ]
            without:
              check: ice
              answers: [ { is: yes, conclude: iced }, { is: no, conclude: dead } ]
      """;

  private static ChartCost cost(String... parts) {
    String text = HANDBOOK + String.join("", parts);
    KnowledgeBase kb = Resolver.resolve(new Sources(List.of(SourceFile.of("handbook.yaml", text))));
    ChartReport report = ChartAnalysis.of(kb, kb.charts().get("c"), Deadline.NEVER);
    assertTrue(report.proved(), report.findings().toString());
    return report.cost().orElseThrow();
  }

  private static String rules(String order) {
    return RULES.replace("ORDER", order);
  }

  private static void assertCost(
      double minutes, double weighted, double leastMinutes, double least, ChartCost cost) {
    assertEquals(minutes, cost.minutes(), EXACT);
    assertEquals(weighted, cost.weighted(), EXACT);
    assertEquals(leastMinutes, cost.cheapest().minutes(), EXACT);
    assertEquals(least, cost.cheapest().weighted(), EXACT);
    assertEquals(0, cost.cheapest().gap());
    assertEquals(weighted - least, cost.difference(), EXACT);
  }

  /**
   * The chart always asks both: 8 + 2 min, effort 2 × 8 + 2 = 18. The ice first ends half of the
   * jobs: 2 + 8 / 2 = 6 min, effort 2 + 16 / 2 = 10. All of the 8 between them is lost on top.
   */
  @Test
  void askingTheDearReadingFirstIsTheDetour() {
    ChartCost cost = cost(readings("panel"), rules("last"), VOLTAGE_FIRST);
    assertCost(10, 18, 6, 10, cost);
    assertEquals(
        Optional.of(new Detour("voltage", "voltage", Optional.of("ice"), true, 8)), cost.detour());
    assertEquals(Optional.empty(), cost.hazard());
  }

  @Test
  void theCheapestOrderWrittenByHandCostsAsMuch() {
    ChartCost cost =
        cost(
            readings("panel"),
            rules("last"),
            """
            charts:
              c:
                symptom: s
                start: ice
                steps:
                  voltage:
                    check: voltage
                    answers: [ { is: yes, conclude: worn }, { is: no, conclude: dead } ]
                  ice:
                    check: ice
                    answers: [ { is: yes, conclude: iced }, { is: no, next: voltage } ]
            """);
    assertCost(6, 10, 6, 10, cost);
    assertEquals(0, cost.difference());
    assertEquals(Optional.empty(), cost.detour());
  }

  /** With live voltage, effort is 3 × 8 + 2 = 26 against 2 + 24 / 2 = 14. */
  @Test
  void aHazardousCheckBeforeAnEasyOneIsNamed() {
    ChartCost cost = cost(readings("live-voltage"), rules("last"), VOLTAGE_FIRST);
    assertCost(10, 26, 6, 14, cost);
    assertEquals(Optional.of(new EarlyHazard("voltage", "voltage", "ice")), cost.hazard());
    assertEquals(12, cost.detour().orElseThrow().weighted(), EXACT);
    ChartCost anywhere = cost(readings("live-voltage"), rules("anywhere"), VOLTAGE_FIRST);
    assertCost(10, 26, 6, 14, anywhere);
    assertEquals(Optional.empty(), anywhere.hazard());
  }

  /** The mood says nothing: a minute for nothing, and then the cheapest order, either way. */
  @Test
  void whatOnlyTheChartAsksIsPaidAndSharesTheLikelihood() {
    ChartCost cost =
        cost(
            readings("panel"),
            rules("last"),
            """
            charts:
              c:
                symptom: s
                start: mood
                steps:
                  mood:
                    check: mood
                    answers: [ { is: calm, next: ice }, { is: angry, next: ice-too } ]
                  ice:
                    check: ice
                    answers: [ { is: yes, conclude: iced }, { is: no, next: voltage } ]
                  ice-too:
                    check: ice
                    answers: [ { is: yes, conclude: iced }, { is: no, next: voltage } ]
                  voltage:
                    check: voltage
                    answers: [ { is: yes, conclude: worn }, { is: no, conclude: dead } ]
            """);
    assertCost(7, 11, 6, 10, cost);
    assertEquals(
        Optional.of(new Detour("mood", "mood", Optional.of("ice"), false, 1)), cost.detour());
  }

  /** The same is read only once: 10 min and effort 18 as in the first test, though asked again. */
  @Test
  void aReadingAskedTwiceIsPaidOnceAndACheckTooManyIsALoss() {
    ChartCost cost =
        cost(
            readings("panel"),
            rules("last"),
            """
            charts:
              c:
                symptom: s
                start: ice
                steps:
                  ice:
                    check: ice
                    answers: [ { is: yes, next: needless }, { is: no, next: voltage } ]
                  needless:
                    check: voltage
                    answers: [ { is: yes, next: again }, { is: no, conclude: iced } ]
                  again:
                    check: ice
                    answers: [ { is: yes, conclude: iced }, { is: no, conclude: worn } ]
                  voltage:
                    check: voltage
                    answers: [ { is: yes, conclude: worn }, { is: no, conclude: dead } ]
            """);
    assertCost(10, 18, 6, 10, cost);
    assertEquals(
        Optional.of(new Detour("needless", "voltage", Optional.empty(), false, 8)), cost.detour());
  }

  /**
   * The machines are met equally often. The chart opens the panel on both: 4 + 1 min, effort 10; on
   * a Tarn it needs the lamp too, 3 min: on average 6.5 min, effort 11.5. Who knows the machine
   * opens the panel on a Fell only: 2.5 + 1.5 min, effort 5 + 1.5. On a Tarn the 10 are lost, in
   * half of the jobs. Two readings behind the panel would open it once: the relay costs 1 min more.
   */
  @Test
  void theMachineIsKnownAndASetUpIsPaidOnce() {
    ChartCost cost =
        cost(
            """
            equipment:
              families: { fell: { title: Fell }, tarn: { title: Tarn } }
              models: { F1: { family: fell }, T1: { family: tarn } }
            set-ups: { panel-open: { title: Panel open, minutes: 4, access: panel } }
            readings:
              relay: { ask: "Is it closed?", values: yes/no, access: panel, set-up: panel-open }
              fuse: { ask: "Is it whole?", values: yes/no, access: panel, set-up: panel-open }
              lamp: { ask: "Is it lit?", values: yes/no, minutes: 3 }
            symptoms:
              s:
                title: S
                rules:
                  f1: { when: { family: fell, relay: yes }, conclude: dead, because: b }
                  f2: { when: { family: fell, relay: no }, conclude: worn, because: b }
                  t1: { when: { family: tarn, lamp: yes }, conclude: dead, because: b }
                  t2: { when: { family: tarn, lamp: no }, conclude: worn, because: b }
            charts:
              c:
                symptom: s
                start: relay
                steps:
                  relay:
                    check: relay
                    answers: [ { is: yes, next: machine }, { is: no, next: machine-too } ]
                  machine:
                    check: family
                    answers: [ { is: fell, next: fuse }, { is: tarn, next: lamp } ]
                  machine-too:
                    check: family
                    answers: [ { is: fell, conclude: worn }, { is: tarn, next: lamp } ]
                  fuse:
                    check: fuse
                    answers: [ { is: yes, conclude: dead }, { is: no, conclude: dead } ]
                  lamp:
                    check: lamp
                    answers: [ { is: yes, conclude: dead }, { is: no, conclude: worn } ]
            """);
    // the fuse: 1 min, effort 2, on a Fell with a closed relay, a quarter of the jobs
    assertCost(6.5 + 0.25, 11.5 + 0.5, 4, 6.5, cost);
    assertEquals(
        Optional.of(new Detour("relay", "relay", Optional.of("lamp"), false, 5)), cost.detour());
  }
}
