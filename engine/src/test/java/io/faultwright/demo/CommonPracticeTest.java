package io.faultwright.demo;

import static io.faultwright.model.Condition.Side.ABOVE;
import static io.faultwright.model.Condition.Side.BELOW;
import static io.faultwright.model.Condition.Side.WITHIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.resolve.Resolver;
import io.faultwright.run.CaseResult;
import io.faultwright.run.Runner;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * What the trade holds to be so, on every model that it concerns, through the rules of the demo
 * handbook in Drools. Common practice, no source; the figures are those of the handbook, invented.
 */
class CommonPracticeTest {
  private static final Sources DEMO = FolderReader.read(Path.of("..", "rules", "walk-in-freezers"));
  private static final KnowledgeBase FREEZERS = Resolver.resolve(DEMO);
  private static final List<String> AMBIENTS = List.of("-20", "3", "32", "45");

  /** Models with a software version each, and those of them with hot gas. */
  private static final int BUILDS = 29;

  private static final int HOT_GAS = 19;
  private static final String COOLING_CYCLE = "{ refer: room-too-warm }";

  private final StringBuilder cases = new StringBuilder("cases:\n");
  private int count;

  /** Common practice, no source. */
  @Test
  void highSideUpAndLowSideDownInTheDefrostIsAHotGasValveThatDoesNotFeed() {
    for (Build build : builds("defrost", "hot-gas")) {
      for (String ambient : AMBIENTS) {
        expect("ice-untouched", defrost(build, ambient, ABOVE, BELOW), "hot-gas-valve-stuck");
      }
    }
    assertAllPass(HOT_GAS * AMBIENTS.size());
  }

  /** Common practice, no source. */
  @Test
  void bothLowWithARightCoolingCycleOnARemoteCondenserIsTheLoopFeedValveAndNoLowCharge() {
    for (Build build : builds("defrost", "hot-gas")) {
      String cause = build.model().family().equals("scar") ? "loop-feed-valve-stuck" : "charge-low";
      for (String ambient : AMBIENTS) {
        expect("ice-untouched", defrost(build, ambient, BELOW, BELOW), cause);
      }
    }
    assertAllPass(HOT_GAS * AMBIENTS.size());
  }

  /** Common practice, no source: 65 °C, which the trade also rounds to 150 °F. */
  @Test
  void aDischargeLineNotAbove65DegreesRefersBackToTheCoolingCycle() {
    for (Build build : builds("defrost", "hot-gas")) {
      for (String symptom : List.of("ice-untouched", "ice-hanging")) {
        Machine machine = Machine.of(FREEZERS, build).chosen("defrost-signal", "clock-lost");
        String line = "discharge-line-temperature";
        expect(symptom, machine.measured(line, "20"), COOLING_CYCLE);
        expect(symptom, machine.measured(line, "65"), COOLING_CYCLE);
      }
      Machine hot = Machine.of(FREEZERS, build).measured("discharge-line-temperature", "65.5");
      expect("ice-untouched", hot.chosen("defrost-signal", "clock-lost"), "defrost-schedule-lost");
    }
    assertAllPass(HOT_GAS * 5);
  }

  /** Common practice, no source. */
  @Test
  void aLineTemperatureIsTakenAbout15CentimetresFromTheCompressor() {
    for (String id : List.of("suction-line-temperature", "discharge-line-temperature")) {
      Reading reading = FREEZERS.readings().get(id);
      String place = "about 15 cm (6 in) from the compressor";
      assertTrue(reading.where().orElseThrow().contains(place), id);
      assertTrue(reading.how().stream().anyMatch(step -> step.contains(place)), id);
      assertTrue(reading.cautions().contains("hot-surface"), id);
    }
  }

  /** Common practice, no source: the pattern of each fault, read in SI and in US units. */
  @Test
  void thePatternOfBothPressuresSuperheatAndSubcoolingTellsTheFaultsApart() {
    for (Build build : FREEZERS.equipment().builds()) {
      patterns(build).forEach((fault, machine) -> expect("cooling-capacity-low", machine, fault));
    }
    assertAllPass(BUILDS * 9);
  }

  private static Map<String, Machine> patterns(Build build) {
    Map<String, Machine> patterns = new LinkedHashMap<>();
    patterns.put("charge-low", cooling(build, BELOW, WITHIN, ABOVE, BELOW));
    patterns.put(
        "drier-blocked", cooling(build, BELOW, WITHIN, ABOVE, WITHIN).measured("drier-drop", "4"));
    patterns.put(
        "expansion-valve-starved",
        cooling(build, BELOW, WITHIN, ABOVE, ABOVE).measured("drier-drop", "0"));
    patterns.put("expansion-valve-floods", cooling(build, ABOVE, WITHIN, BELOW, WITHIN));
    patterns.put("compressor-valves-worn", cooling(build, ABOVE, BELOW, WITHIN, WITHIN));
    patterns.put(
        "evaporator-dirty",
        cooling(build, BELOW, WITHIN, BELOW, WITHIN).chosen("coil-frost", "even"));
    patterns.put(
        "charge-too-high", cooling(build, WITHIN, ABOVE, WITHIN, ABOVE).standstill("25", "0"));
    patterns.put(
        "air-in-circuit", cooling(build, WITHIN, ABOVE, WITHIN, ABOVE).standstill("25", "5"));
    patterns.put(
        "condenser-dirty",
        cooling(build, WITHIN, ABOVE, WITHIN, WITHIN)
            .standstill("25", "0")
            .chosen("condenser-surface", "dirty"));
    return patterns;
  }

  private static Machine cooling(
      Build build, Side suction, Side discharge, Side superheat, Side subcooling) {
    return Machine.of(FREEZERS, build)
        .chosen("compressor-state", "running")
        .chosen("evaporator-fan-running", "yes")
        .measured("ambient-temperature", "25")
        .measured("room-temperature", "-24")
        .on(suction, "suction-pressure")
        .on(discharge, "discharge-pressure")
        .measured("liquid-pressure", "14")
        .superheat(superheat)
        .subcooling(subcooling);
  }

  /** In the heating phase of a defrost whose call, voltage, coil and cooling cycle are right. */
  private static Machine defrost(Build build, String ambient, Side high, Side low) {
    return Machine.of(FREEZERS, build)
        .measured("discharge-line-temperature", "75")
        .chosen("defrost-signal", "called")
        .chosen("defrost-voltage", "at-load")
        .on(WITHIN, "hot-gas-coil-resistance")
        .measured("ambient-temperature", ambient)
        .on(high, "discharge-pressure-in-defrost")
        .on(low, "suction-pressure-in-defrost");
  }

  private static List<Build> builds(String option, String value) {
    return FREEZERS.equipment().builds().stream()
        .filter(build -> value.equals(build.attribute(option).orElse("")))
        .toList();
  }

  /** A case for each system of units. */
  private void expect(String symptom, Machine machine, String outcome) {
    count++;
    for (boolean inUsUnits : List.of(false, true)) {
      cases.append(
          "  common-practice-%d-%s: { symptom: %s, given: %s, expect: %s }\n"
              .formatted(
                  count, inUsUnits ? "us" : "si", symptom, machine.given(inUsUnits), outcome));
    }
  }

  private void assertAllPass(int expected) {
    List<SourceFile> files = new ArrayList<>(DEMO.files());
    files.removeIf(file -> file.path().matches("(cases|sessions)/.*"));
    files.add(new SourceFile("cases/common-practice.yaml", cases.toString()));
    KnowledgeBase kb = Resolver.resolve(new Sources(files));
    List<CaseResult> results = new Runner(kb, RuleCompiler.compile(kb)).runCases();
    assertEquals(
        List.of(),
        results.stream()
            .filter(result -> !result.passed())
            .map(result -> result.recorded() + " " + result.trace().verdict())
            .toList());
    assertEquals(expected, count, "machines");
    assertEquals(2 * expected, results.size(), "cases");
  }
}
