package io.faultwright.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.KnowledgeBase;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Charts as a technician reads them. */
class ChartBuilderTest {
  private static final String EQUIPMENT =
      """
      equipment:
        families: { fell: { title: Fell }, tarn: { title: Tarn } }
        options:
          controller:
            title: Controller
            values:
              k1: { title: K1, software: [1.4, 2.9, 2.10] }
        nameplate:
          where: Inside the door.
          parts: [ { family: { F: fell, T: tarn } }, { digits: 1 }, { controller: { K: k1 } } ]
        models: { F1K: { title: Fell 1 }, T1K: { title: Tarn 1 } }
      cautions:
        pressure:
          signal: warning
          text: Gas under pressure. Wear goggles.
          covers: [refrigerant-circuit]
        live: { signal: danger, text: Live parts kill., covers: [live-voltage] }
      readings:
        lamp: { ask: "What does the lamp do?", values: { steady: Steady, blinks: Blinks, off: Off } }
        supply:
          ask: Is there voltage?
          values: yes/no
          access: live-voltage
          how: [ Prove the meter., Measure. ]
        pressure:
          title: Suction pressure
          ask: What is the suction pressure?
          unit: bar(g)
          range: 0 to 10
          access: refrigerant-circuit
      limits:
        pressure:
          by: [family]
          rows:
            - { family: fell, low: 1, high: 2 }
            - { family: tarn, low: 2, high: 3 }
      faults:
        bulb: { title: Bulb broken, remedy: [Replace it.] }
        fuse: { title: Fuse blown }
        leak: { title: Charge lost }
        valve: { title: Valve open }
      """;

  private static Flowchart chart(String symptom) {
    KnowledgeBase knowledge = Demos.of(EQUIPMENT + symptom);
    List<ScopedChart> charts = ChartBuilder.charts(knowledge, knowledge.symptoms().get("s"));
    assertEquals(1, charts.size());
    return charts.get(0).chart();
  }

  private static final String PRESSURE =
      """
      symptoms:
        s:
          title: It does not cool
          first: [ { when: { lamp: [steady, blinks] }, otherwise: dark } ]
          rules:
            low: { when: { pressure: below limits }, conclude: leak, because: b }
            high: { when: { pressure: above limits }, conclude: valve, because: b }
            right: { when: { pressure: within limits, supply: no }, conclude: fuse, because: b }
            rest: { when: { pressure: within limits, supply: yes }, escalate: hotline, because: b }
        dark:
          title: It is dark
          rules: { any-case: { when: {}, conclude: bulb, because: b } }
      """;

  @Test
  void drawsChecksCautionsAndOutcomes() {
    assertEquals(
        """
        start: It does not cool
        - check.lamp: What does the lamp do?
          Steady or blinks
          - check.pressure.limits: What is the suction pressure?
            ! WARNING Gas under pressure. Wear goggles.
            . Compare with the limits: Fell 1 to 2 bar(g); Tarn 2 to 3 bar(g).
            Below limits
            - FAULT Charge lost (Remedy: leak)
            Within limits
            - check.supply: Is there voltage?
              ! DANGER Live parts kill.
              . Prove the meter.
              . Measure.
              Yes
              - ESCALATION Ask the hotline (+00 000 000)
              No
              - FAULT Fuse blown (Remedy: fuse)
            Above limits
            - FAULT Valve open (Remedy: valve)
          Off
          - REFERRAL Go to: It is dark (Chart: dark)
        """,
        outline(chart(PRESSURE)));
  }

  private static final String DIFFERENCE =
      """
        room: { title: Room, ask: "How warm is the room?", unit: °C, range: -40 to 30, how: [Wait.] }
        line:
          title: Line
          ask: How cold is the line?
          unit: °C
          range: -45 to 30
          access: refrigerant-circuit
          minutes: 9
        apart: { title: Room above line, difference: [room, line] }
      faults:
        leak: { title: Charge lost }
        valve: { title: Valve open }
      symptoms:
        s:
          title: It does not cool
          rules:
            far: { when: { apart: above 8 K }, conclude: leak, because: b }
            near: { when: { apart: at most 8 K }, conclude: valve, because: b }
      """;

  @Test
  void asksOnceForWhatIsWorkedOutFromTwoReadings() {
    String base = EQUIPMENT.substring(0, EQUIPMENT.indexOf("limits:"));
    KnowledgeBase knowledge = Demos.of(base + DIFFERENCE);
    assertEquals(
        """
        start: It does not cool
        - check.apart: How much is this: room above line?
          ! WARNING Gas under pressure. Wear goggles.
          . Work out: Room − Line.
          . How warm is the room?
          . Wait.
          . How cold is the line?
          At most 8 K
          - FAULT Valve open (Remedy: valve)
          Above 8 K
          - FAULT Charge lost (Remedy: leak)
        """,
        outline(ChartBuilder.charts(knowledge, knowledge.symptoms().get("s")).get(0).chart()));
  }

  private static final String BY_SOFTWARE =
      """
      symptoms:
        s:
          title: It blinks
          rules:
            a: { when: { lamp: not blinks }, conclude: bulb, because: b }
            b: { when: { lamp: blinks, software: below 2.10 }, conclude: fuse, because: b }
            c: { when: { lamp: blinks, software: at least 2.10 }, conclude: valve, because: b }
      """;

  @Test
  void hasAChartForEachGroupOfMachinesOnWhichTheRulesDiffer() {
    KnowledgeBase knowledge = Demos.of(EQUIPMENT + BY_SOFTWARE);
    List<ScopedChart> charts = ChartBuilder.charts(knowledge, knowledge.symptoms().get("s"));
    assertEquals(
        List.of("Software: at most 2.9", "Software: 2.10"),
        charts.stream().map(ScopedChart::scope).toList());
    assertEquals(
        """
        start: It blinks
        - check.lamp: What does the lamp do?
          Steady or off
          - FAULT Bulb broken (Remedy: bulb)
          Blinks
          - FAULT Valve open (Remedy: valve)
        """,
        outline(charts.get(1).chart()));
  }

  private static final String TWICE =
      """
      symptoms:
        s:
          title: It does not cool
          rules:
            low: { when: { pressure: below 0.5 bar(g) }, conclude: leak, because: b }
            a: { when: { pressure: at least 0.5 bar(g), family: fell }, conclude: valve, because: b }
            b:
              when: { all: [ { pressure: at least 0.5 bar(g), family: tarn }, { pressure: below limits } ] }
              conclude: fuse
              because: b
            c:
              when: { all: [ { pressure: at least 0.5 bar(g), family: tarn }, { pressure: not below limits } ] }
              conclude: valve
              because: b
      """;

  /** What was read is judged again without being read again, by the limits of the machine. */
  @Test
  void takesNoReadingTwice() {
    KnowledgeBase knowledge = Demos.of(EQUIPMENT + TWICE);
    List<ScopedChart> charts = ChartBuilder.charts(knowledge, knowledge.symptoms().get("s"));
    assertEquals(
        """
        start: It does not cool
        - check.pressure: What is the suction pressure?
          ! WARNING Gas under pressure. Wear goggles.
          Below 0.5 bar(g)
          - FAULT Charge lost (Remedy: leak)
          At least 0.5 bar(g)
          - check.pressure.limits: What is the suction pressure?
            . Compare with the limits: 2 to 3 bar(g).
            Below limits
            - FAULT Fuse blown (Remedy: fuse)
            Within or above limits
            - FAULT Valve open (Remedy: valve)
        """,
        outline(charts.get(1).chart()));
  }

  @Test
  void saysWhereTheRulesEndAndWhereTheyDisagree() {
    assertEquals(
        """
        start: It blinks
        - check.lamp: What does the lamp do?
          Steady
          - ESCALATION The rules disagree: ask (Bulb broken or Fuse blown)
          Blinks
          - FAULT Fuse blown (Remedy: fuse)
          Off
          - ESCALATION The rules end here: ask (+00 000 000)
        """,
        outline(
            chart(
                """
                symptoms:
                  s:
                    title: It blinks
                    rules:
                      a: { when: { lamp: steady }, conclude: bulb, because: b }
                      b: { when: { lamp: [steady, blinks] }, conclude: fuse, because: b }
                """)));
  }

  @Test
  void thatAReadingCannotBeTakenIsAnAnswer() {
    String drawn =
        outline(
            chart(
                """
                symptoms:
                  s:
                    title: It blinks
                    rules:
                      a: { when: { pressure: cannot be taken }, escalate: hotline, because: b }
                      b: { when: { pressure: below limits }, conclude: leak, because: b }
                      c: { when: { pressure: not below limits }, conclude: valve, because: b }
                """));
    assertTrue(drawn.contains("Cannot be taken\n  - ESCALATION Ask the hotline"), drawn);
  }

  @Test
  void aSymptomOfOneResultAsksNothing() {
    Flowchart chart =
        chart(
            """
            symptoms:
              s:
                title: It is dark
                rules: { any-case: { when: {}, conclude: bulb, because: b } }
            """);
    assertEquals("start: It is dark\n- FAULT Bulb broken (Remedy: bulb)\n", outline(chart));
  }

  @Test
  void theSameRulesGiveTheSameChart() {
    assertEquals(chart(PRESSURE), chart(PRESSURE));
  }

  /**
   * Charts of ten rules once took a hundred symbols; the space that a check takes keeps them near
   * their rules.
   */
  @Test
  void chartsStayNearTheSizeOfTheirRules() {
    for (KnowledgeBase knowledge : Demos.all()) {
      knowledge
          .symptoms()
          .values()
          .forEach(
              symptom -> {
                for (ScopedChart one : Demos.charts(knowledge, symptom)) {
                  int symbols = one.chart().nodes().size();
                  assertTrue(symbols <= 7 * symptom.rules().size(), symptom.id());
                }
              });
    }
  }

  private static String outline(Flowchart chart) {
    StringBuilder out = new StringBuilder("start: " + chart.start().title() + "\n");
    draw(chart, chart.from("start").get(0).to(), "", out, new HashSet<>());
    return out.toString();
  }

  private static void draw(
      Flowchart chart, String id, String indent, StringBuilder out, Set<String> seen) {
    Node node = chart.nodes().get(id);
    if (node instanceof Node.Outcome outcome) {
      String text = outcome.ending() + " " + outcome.title() + " (" + outcome.advice() + ")";
      out.append(indent).append("- ").append(text).append("\n");
      return;
    }
    Node.Check check = (Node.Check) node;
    out.append(indent).append("- ").append(id).append(": ").append(check.question()).append("\n");
    if (seen.add(id)) {
      String inner = indent + "  ";
      List<Warning> warnings = check.warnings();
      warnings.forEach(w -> out.append(inner + "! " + w.word() + " " + w.text() + "\n"));
      check.steps().forEach(step -> out.append(inner + ". " + step + "\n"));
      for (Edge edge : chart.from(id)) {
        out.append(inner).append(edge.answer()).append("\n");
        draw(chart, edge.to(), inner, out, seen);
      }
    }
  }
}
