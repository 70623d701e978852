package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.wording.SampleBase;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DistinctionOutputTest {
  private static final KnowledgeBase BASE = SampleBase.build();

  @Test
  void anOverviewIsSortedByWhatHasToBeTaken() {
    Golden.check("tell-apart.txt", overview(Ink.PLAIN));
  }

  @Test
  void colourChangesNothingButColour() {
    assertEquals(overview(Ink.PLAIN), overview(Ink.COLOURED).replaceAll("\u001B\\[[0-9;]*m", ""));
  }

  private static String overview(Ink ink) {
    return new DistinctionText(BASE, ink).overview(SampleDistinctions.build());
  }

  @Test
  void detailsSayWhatEachReadingDoes() {
    Golden.check(
        "tell-apart-details.txt",
        new DistinctionText(BASE, Ink.PLAIN).details(SampleDistinctions.build()));
  }

  @Test
  void machinesReadTheSame() throws Exception {
    String written = new DistinctionJson(BASE).write(SampleDistinctions.build());
    Golden.check("tell-apart.json", written);
    JsonNode symptom = new ObjectMapper().readTree(written).get("symptoms").get(0);
    assertEquals(List.of("id", "faults", "groups", "pairs"), names(symptom));
    assertEquals(
        List.of(
            "faults", "always", "sameMachine", "cheapest", "needed", "alone", "both", "elsewhere"),
        names(symptom.get("pairs").get(0)));
  }

  private static List<String> names(JsonNode node) {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }
}
