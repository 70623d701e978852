package io.faultwright.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.finding.FindingKind;
import io.faultwright.input.ReadCases;
import io.faultwright.input.TableUse;
import io.faultwright.report.CheckJson;
import io.faultwright.resolve.GivenCases;
import io.faultwright.resolve.Resolver;
import io.faultwright.run.Runner;
import io.faultwright.run.Status;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A finding about a computed reading, from the check to a run of its report. */
class DerivedWitnessTest {
  private static final Sources SOURCES =
      new Sources(
          List.of(
              SourceFile.of(
                  "handbook.yaml",
                  """
                  handbook: { title: T, maker: M, revision: "1", date: 2026-01-01, language: en,
                    disclaimer: D }
                  readings:
                    room: { ask: "How warm is the room?", unit: °C, range: -40 to 30 }
                    coil: { ask: "How cold is the coil?", unit: °C, range: -45 to 30 }
                    gap: { difference: [room, coil] }
                  faults:
                    dirty: { title: Dirty, remedy: [ Clean. ], verify: [ Look. ] }
                  symptoms:
                    warm:
                      title: Warm
                      rules:
                        far: { when: { gap: above 8 K }, conclude: dirty, because: It is far. }
                        zero: { when: { coil: above 0 °C }, conclude: dirty, because: It is warm. }
                  """)));
  private static final Checked CHECKED = new Pipeline(Scope.ALL, Watch.NOBODY).check(SOURCES);

  @Test
  void witnessesStandWithoutWhatIsComputedAndItStandsBesideThem() throws Exception {
    JsonNode gap = json().get("findings").get(0);
    assertEquals("gap", gap.get("kind").asText());
    assertTrue(gap.get("witness").get("gap") == null, gap::toString);
    assertTrue(gap.get("derived").get("gap").asText().endsWith(" K"), gap::toString);
  }

  @Test
  void theReportCanBeRun() throws Exception {
    GivenCases cases =
        ReadCases.read(
            SourceFile.of("report.json", json().toString()),
            Resolver.resolution(SOURCES),
            TableUse.OWN);
    assertEquals(List.of(), cases.problems());
    Runner runner = new Runner(CHECKED.knowledge(), RuleCompiler.compile(CHECKED.knowledge()));
    assertEquals(
        Status.NO_ANSWER, runner.run("warm", cases.cases().get(0).recorded().given()).status());
  }

  @Test
  void operandsOfAReadingThatIsAskedAreUsed() {
    assertTrue(
        CHECKED.report().findings().stream()
            .noneMatch(finding -> finding.kind() == FindingKind.UNUSED_READING),
        () -> CHECKED.report().toString());
  }

  private static JsonNode json() throws Exception {
    return new ObjectMapper().readTree(new CheckJson(CHECKED.knowledge()).write(CHECKED.report()));
  }
}
