package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.faultwright.adequacy.Measured;
import io.faultwright.wording.SampleBase;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CasesOutputTest {
  private final Measured stopped = SampleMeasured.stopped();

  @Test
  void peopleReadTheFirstFew() {
    Golden.check("cases.txt", text(stopped, Ink.PLAIN, false));
  }

  @Test
  void everythingIsListedWhereAsked() {
    Golden.check("cases-all.txt", text(stopped, Ink.PLAIN, true));
  }

  @Test
  void colourChangesNothingButColour() {
    assertEquals(
        text(stopped, Ink.PLAIN, false),
        text(stopped, Ink.COLOURED, false).replaceAll("\u001B\\[[0-9;]*m", ""));
  }

  @Test
  void wholeWorkSaysNothingOfStopping() {
    String whole = text(SampleMeasured.whole(), Ink.PLAIN, false);
    assertFalse(whole.contains("stopped"), whole);
    assertFalse(whole.contains("Mistakes"), whole);
    assertTrue(whole.contains("4 cases measured, 0 failed\n"), whole);
  }

  private static String text(Measured measured, Ink ink, boolean everything) {
    return new CasesText(SampleBase.build(), ink, everything).write(measured);
  }

  @Test
  void machinesReadEverything() {
    Golden.check("cases.json", json(stopped));
  }

  @Test
  void fieldsStandInTheOrderOfTheContract() throws Exception {
    JsonNode report = new ObjectMapper().readTree(json(stopped));
    assertEquals(
        List.of("handbook", "cases", "work", "criteria", "equipment", "symptoms", "mistakes"),
        names(report));
    JsonNode symptom = report.get("symptoms").get(0);
    assertEquals(List.of("id", "cases", "criteria", "goals"), names(symptom));
    assertEquals(
        List.of("criterion", "symptom", "rule", "words", "places", "shown", "possible", "shownOn"),
        names(symptom.get("goals").get(0)));
    assertEquals(
        List.of("operator", "symptom", "rule", "words", "places", "fate", "by", "shownBy"),
        names(report.get("mistakes").get("each").get(0)));
  }

  @Test
  void mistakesNobodyAskedForAreNull() throws Exception {
    assertTrue(new ObjectMapper().readTree(json(SampleMeasured.whole())).get("mistakes").isNull());
  }

  private static String json(Measured measured) {
    return new CasesJson(SampleBase.build()).write(measured);
  }

  private static List<String> names(JsonNode node) {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }
}
