package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.faultwright.diagnostic.Problem;
import io.faultwright.source.Place;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemOutputTest {
  private static final List<Problem> PROBLEMS =
      List.of(
          new Problem(List.of(), "there is no `handbook.yaml` here", "name the folder that has it"),
          new Problem(
              List.of(new Place("rules/eis.yaml", 5, 17, 3), new Place("rules/eis.yaml", 7, 17, 3)),
              "`icy` is not a reading",
              "did you mean `ice`?"));

  @Test
  void problemsAreShownWithTheirLines() {
    Golden.check("problems.txt", new ProblemText(SampleReport.SOURCES, Ink.PLAIN).write(PROBLEMS));
  }

  @Test
  void jsonHasOneObjectForEachProblem() throws Exception {
    String written = ProblemJson.write(PROBLEMS);
    Golden.check("problems.json", written);
    JsonNode problem = new ObjectMapper().readTree(written).get("problems").get(1);
    assertEquals(17, problem.get("places").get(0).get("column").asInt());
    assertEquals("did you mean `ice`?", problem.get("help").asText());
  }
}
