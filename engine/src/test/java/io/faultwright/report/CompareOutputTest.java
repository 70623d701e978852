package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.faultwright.change.Comparison;
import io.faultwright.wording.SampleBase;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CompareOutputTest {
  private final Comparison comparison = SampleComparison.build();

  @Test
  void peopleReadFewLines() {
    Golden.check("compare.txt", text(Ink.PLAIN));
  }

  @Test
  void colourChangesNothingButColour() {
    assertEquals(text(Ink.PLAIN), text(Ink.COLOURED).replaceAll("\u001B\\[[0-9;]*m", ""));
  }

  private String text(Ink ink) {
    return new CompareText(SampleBase.build(), ink).write(comparison);
  }

  @Test
  void machinesReadEverything() {
    Golden.check("compare.json", json());
  }

  @Test
  void fieldsStandInTheOrderOfTheContract() throws Exception {
    JsonNode report = new ObjectMapper().readTree(json());
    assertEquals(
        List.of("handbook", "before", "after", "sameMeaning", "equipment", "symptoms", "edits"),
        names(report));
    JsonNode symptom = report.get("symptoms").get(0);
    assertEquals(
        List.of("id", "unchanged", "proof", "share", "complete", "regions"), names(symptom));
    assertEquals(
        List.of("before", "after", "equipment", "readings", "witness", "share", "replayed"),
        names(symptom.get("regions").get(0)));
    assertEquals(
        List.of("concerns", "kind", "id", "field", "manner", "before", "after"),
        names(report.get("edits").get(0)));
  }

  private String json() {
    return new CompareJson(SampleBase.build()).write(comparison);
  }

  private static List<String> names(JsonNode node) {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }
}
