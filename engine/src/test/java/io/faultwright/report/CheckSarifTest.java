package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.faultwright.diagnostic.Problem;
import io.faultwright.finding.FindingKind;
import io.faultwright.source.Place;
import io.faultwright.wording.SampleBase;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CheckSarifTest {
  private static final Surroundings AROUND =
      new Surroundings(
          "rules/Kühl zellen/",
          Optional.of("1.0"),
          Optional.of("https://handbook.example/findings/"));

  private final String written =
      new CheckSarif(AROUND).write(SampleBase.build(), SampleReport.build());

  @Test
  void wholeLogIsStored() {
    Golden.check("check.sarif", written);
  }

  @Test
  void logIsValid() {
    assertEquals(List.of(), Validity.sarif(written));
    assertFalse(Validity.sarif(written.replace("\"level\"", "\"leve\"")).isEmpty());
  }

  @Test
  void everyResultNamesItsRulePlaceAndLevel() throws Exception {
    JsonNode run = new ObjectMapper().readTree(written).get("runs").get(0);
    JsonNode rules = run.get("tool").get("driver").get("rules");
    assertEquals(3, run.get("results").size());
    for (JsonNode result : run.get("results")) {
      JsonNode rule = rules.get(result.get("ruleIndex").asInt());
      assertEquals(result.get("ruleId"), rule.get("id"));
      assertEquals(result.get("level"), rule.get("defaultConfiguration").get("level"));
      assertEquals(
          "https://handbook.example/findings/" + rule.get("id").asText() + ".md",
          rule.get("helpUri").asText());
    }
    JsonNode gap = run.get("results").get(0);
    JsonNode at = gap.get("locations").get(0).get("physicalLocation");
    assertEquals(
        "rules/K%C3%BChl%20zellen/rules/eis.yaml", at.get("artifactLocation").get("uri").asText());
    assertEquals(2, at.get("region").get("startLine").asInt());
    assertEquals(3, at.get("region").get("startColumn").asInt());
    assertEquals(11, at.get("region").get("endColumn").asInt());
    assertEquals("loose", gap.get("properties").get("witness").get("ice").asText());
    assertTrue(gap.get("message").get("text").asText().contains("For example: "));
  }

  @Test
  void whatWasNotProvedIsSaid() throws Exception {
    JsonNode invocation =
        new ObjectMapper().readTree(written).get("runs").get(0).get("invocations").get(0);
    assertTrue(invocation.get("executionSuccessful").asBoolean());
    assertEquals(
        "`ice-left`: proof partial",
        invocation.get("toolExecutionNotifications").get(0).get("message").get("text").asText());
  }

  @Test
  void problemsAreResultsToo() throws Exception {
    Place place = new Place("a.yaml", 5, 17, 3);
    String log =
        new CheckSarif(Surroundings.NONE)
            .write(
                List.of(
                    new Problem(List.of(), "there is no `handbook.yaml` here", ""),
                    Problem.at(place, "found `{0} [home](http://x.example)`", "try `a`\u0007")));
    assertEquals(List.of(), Validity.sarif(log));
    JsonNode run = new ObjectMapper().readTree(log).get("runs").get(0);
    assertFalse(run.get("invocations").get(0).get("executionSuccessful").asBoolean());
    JsonNode result = run.get("results").get(1);
    assertEquals("unreadable-input", result.get("ruleId").asText());
    assertEquals("error", result.get("level").asText());
    assertEquals(
        "found `{{0}} [home] (http://x.example)`\n\nHelp: try `a`\uFFFD",
        result.get("message").get("text").asText());
  }

  @Test
  void everyKindBringsItsHelp() {
    for (FindingKind kind : FindingKind.values()) {
      FindingPage page = FindingPage.of(kind);
      assertFalse(page.summary().isBlank() || page.summary().contains("\n"), kind.slug());
      assertTrue(page.help().length() > 100, kind.slug());
      assertFalse(page.help().contains("```") || page.help().contains("]("), kind.slug());
    }
  }
}
