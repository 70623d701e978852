package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.faultwright.wording.SampleBase;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CheckJsonTest {
  private final String written = new CheckJson(SampleBase.build()).write(SampleReport.build());

  @Test
  void wholeReportIsStored() {
    Golden.check("check.json", written);
  }

  @Test
  void fieldsStandInTheOrderOfTheContract() throws Exception {
    JsonNode report = new ObjectMapper().readTree(written);
    assertEquals(
        List.of("handbook", "findings", "symptoms", "charts", "cases", "summary"), names(report));
    JsonNode finding = report.get("findings").get(0);
    assertEquals(
        List.of(
            "kind",
            "severity",
            "symptom",
            "rules",
            "places",
            "message",
            "help",
            "witness",
            "region",
            "share",
            "replayed"),
        names(finding));
    assertEquals("gap", finding.get("kind").asText());
    assertEquals("loose", finding.get("witness").get("ice").asText());
    assertEquals("-12.5 °C", finding.get("witness").get("room").asText());
    assertEquals("cannot be taken", finding.get("witness").get("fan").asText());
    assertEquals(List.of("low", "high", "exact"), names(finding.get("share")));
  }

  @Test
  void whatIsNotKnownIsNull() throws Exception {
    JsonNode unused = new ObjectMapper().readTree(written).get("findings").get(2);
    assertEquals("unused-reading", unused.get("kind").asText());
    assertTrue(unused.get("symptom").isNull());
    assertTrue(unused.get("witness").isNull());
    assertTrue(unused.get("share").isNull());
  }

  private static List<String> names(JsonNode node) {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }
}
