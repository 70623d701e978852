package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;

class TraceOutputTest {
  private final RunReport report = SampleRuns.report();

  @Test
  void peopleReadWhatIsConcludedAndWhatToTakeNext() {
    Golden.check("run.txt", new TraceText(SampleRuns.BASE, Ink.PLAIN).write(report, false));
  }

  @Test
  void explanationSaysWhyEachRuleFiresOrNot() {
    Golden.check(
        "run-explained.txt", new TraceText(SampleRuns.BASE, Ink.PLAIN).write(report, true));
  }

  @Test
  void machinesReadTheSame() throws Exception {
    String written = new TraceJson(SampleRuns.BASE).write(report, true);
    Golden.check("run.json", written);
    JsonNode first = new ObjectMapper().readTree(written).get("cases").get(0);
    assertEquals("answered", first.get("status").asText());
    assertEquals("valve-restricted", first.get("answers").get(0).asText());
    assertEquals(4, first.get("rules").size());
  }

  @Test
  void rulesAreLeftOutUnlessAskedFor() throws Exception {
    String written = new TraceJson(SampleRuns.BASE).write(report, false);
    assertFalse(new ObjectMapper().readTree(written).get("cases").get(0).has("rules"));
  }

  @Test
  void tableHasARowForEachCase() {
    String written = TraceCsv.write(report);
    Golden.check("run.csv", written);
    List<String> rows = written.lines().toList();
    assertEquals(1 + report.runs().size(), rows.size());
  }
}
