package io.faultwright.translation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class TranslationTest {
  private static final String RULES =
      """
      handbook:
        title: Freezers
        maker: Brantmoor Cold
        revision: "1"
        date: 2026-03-02
        language: en
        base: https://service.example/freezers/
        disclaimer: For technicians.
      equipment:
        families: { fell: { title: Fell } }
        models:
          F-1: { family: fell, refrigerant: R-404A, data: { charge: 1.1 kg, supply: from the wall } }
      readings:
        fan: { title: Fan, ask: "Does the fan run?", values: yes/no }
        coil: { title: Coil, ask: "How is the coil?", values: { clear: Clear, iced: Iced up } }
      faults:
        broken:
          title: The fan is broken
          remedy: [Isolate. Replace it.]
          verify: [See it run.]
          nameplate: [charge, refrigerant]
      symptoms:
        warm:
          title: Warm
          rules:
            stands: { when: { fan: no }, conclude: broken, because: No air moves. }
            runs: { when: { fan: yes }, escalate: the workshop, because: The rules end here. }
      synonyms: { vent: fan, blower: fan }
      """;

  private static final String GERMAN =
      """
      translations:
        de:
          Fan: Ventilator
          Iced up: Vereist
          charge: Füllmenge
          the workshop: die Werkstatt
          vent: Lüfter
          blower: Lüfter
          Connecting gauges: Manometer anschließen
          "- Close the cap.\\n- Wait.": "- Kappe schließen.\\n- Warten."
      """;

  private static final String GUIDE =
      "# Connecting gauges\n\n- Close the cap.\n- Wait.\n\n```\nleave me\n\nas I am\n```\n";

  private static final KnowledgeBase ENGLISH = read();
  private static final KnowledgeBase IN_GERMAN = Translation.of(ENGLISH, "de");

  private static KnowledgeBase read() {
    return Resolver.resolve(
        new Sources(
            List.of(
                new SourceFile("handbook.yaml", RULES),
                new SourceFile("de.yaml", GERMAN),
                new SourceFile("guides/gauges.md", GUIDE))));
  }

  @Test
  void textsAreTranslatedAndIdsStay() {
    assertEquals("Ventilator", IN_GERMAN.readings().get("fan").title());
    assertEquals("Does the fan run?", IN_GERMAN.readings().get("fan").ask());
    assertEquals(
        ENGLISH.symptoms().get("warm").rules().get("stands").when(),
        IN_GERMAN.symptoms().get("warm").rules().get("stands").when());
  }

  @Test
  void theLanguageAndTheAddressAreThatOfTheTranslation() {
    assertEquals("de", IN_GERMAN.handbook().language());
    assertEquals("https://service.example/freezers/de", IN_GERMAN.handbook().base().orElseThrow());
  }

  @Test
  void labelsOfTheNameplateAreTheSameWhereverTheyAreNamed() {
    assertEquals(List.of("Füllmenge", "refrigerant"), IN_GERMAN.faults().get("broken").nameplate());
    assertEquals(
        Map.of("Füllmenge", "1.1 kg", "supply", "from the wall"),
        IN_GERMAN.equipment().models().get("F-1").data());
  }

  @Test
  void whomToAskIsTranslatedWhereItIsShown() {
    assertEquals(
        ENGLISH.symptoms().get("warm").rules().get("runs").conclusion(),
        IN_GERMAN.symptoms().get("warm").rules().get("runs").conclusion());
    assertEquals("die Werkstatt", IN_GERMAN.said("the workshop"));
    assertEquals("the workshop", ENGLISH.said("the workshop"));
  }

  @Test
  void guidesAreTranslatedBlockByBlock() {
    assertEquals("Manometer anschließen", IN_GERMAN.guides().get("gauges").title());
    assertEquals(
        GUIDE
            .replace("Connecting gauges", "Manometer anschließen")
            .replace("Close the cap", "Kappe schließen")
            .replace("Wait", "Warten"),
        IN_GERMAN.guides().get("gauges").markdown());
  }

  @Test
  void withoutTranslationsNothingChangesButTheLanguage() {
    KnowledgeBase french = Translation.of(ENGLISH, "fr");
    assertEquals(ENGLISH.readings(), french.readings());
    assertEquals(ENGLISH.guides(), french.guides());
    assertEquals(ENGLISH.equipment(), french.equipment());
  }

  @Test
  void synonymsThatBecomeOneMeanAllOfTheirs() {
    assertEquals(1, IN_GERMAN.wordbook().synonyms().size());
    assertEquals(java.util.Set.of("fan"), IN_GERMAN.wordbook().synonyms().get("Lüfter").ids());
  }

  @Test
  void figuresAndCodesNeedNoTranslation() {
    Map<Boolean, List<String>> texts =
        Texts.of(ENGLISH).stream()
            .collect(
                Collectors.partitioningBy(
                    ShownText::words, Collectors.mapping(ShownText::text, Collectors.toList())));
    assertTrue(texts.get(false).contains("1.1 kg"), texts.toString());
    assertTrue(texts.get(true).contains("from the wall"), texts.toString());
    assertTrue(texts.get(true).contains("Iced up"), texts.toString());
  }
}
