package io.faultwright.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Limits by ASD-STE100, Simplified Technical English, as excerpted by H. Kaiser in tcworld, August
 * 2016: "Keep procedural sentences as short as possible (20 words maximum)", "Write only one
 * instruction per sentence". How words are counted, and the examples, are from memory or our own.
 */
class PlainCheckTest {
  private static final String TWENTY =
      "Turn the valve until you see that the needle of the gauge stands at the mark on the white dial.";

  private static KnowledgeBase kb(String language, String... steps) {
    String yaml =
        """
        handbook:
          title: T
          maker: Brantmoor Cold
          revision: "1"
          date: 2026-03-02
          language: %s
          disclaimer: D
        faults:
          fan-stands:
            title: Fan stands
            remedy: %s
            verify: [Look at the fan.]
        """;
    List<String> quoted = List.of(steps).stream().map(step -> '"' + step + '"').toList();
    return Resolver.resolve(
        new Sources(List.of(SourceFile.of("handbook.yaml", yaml.formatted(language, quoted)))));
  }

  private static List<String> hints(String... steps) {
    return new PlainCheck(kb("en", steps))
        .hints().stream().map(hint -> hint.rule() + ": " + hint.reason()).toList();
  }

  @Test
  void twentyWordsAreAllowedAndOneMoreIsNot() {
    assertEquals(20, Sentences.words(TWENTY).size());
    assertEquals(List.of(), hints(TWENTY));
    assertEquals(List.of("LENGTH: 21 words"), hints(TWENTY.replace("white", "round white")));
  }

  @Test
  void numbersWithUnitsAndHyphenatedWordsAreOneWord() {
    assertEquals(5, Sentences.words("Set the low-pressure switch to 0.5 bar.").size() - 1);
    assertEquals(4, Sentences.words("Wait 10 min – then look").size());
    assertEquals(4, Sentences.words("Let 12 V reach it.").size());
  }

  @Test
  void colonsAndBracketsMakeSentencesOfTheirOwn() {
    assertEquals(
        List.of("Read both:", "the gauge and the display."),
        Sentences.of("Read both: the gauge and the display."));
    assertEquals(
        List.of("Open the valve .", "a quarter of a turn"),
        Sentences.of("Open the valve (a quarter of a turn)."));
    assertEquals(List.of("Wait for 0.5 bar."), Sentences.of("Wait for 0.5 bar."));
    assertEquals(
        List.of("Use grease, e.g. that of the kit."),
        Sentences.of("Use grease, e.g. that of the kit."));
  }

  @Test
  void aSecondVerbIsASecondInstruction() {
    assertEquals(
        List.of("ONE_INSTRUCTION: `replace` begins a second one"),
        hints("Remove the fan and replace the bearing."));
    assertEquals(List.of(), hints("Remove the fan and the bearing."));
    assertEquals(List.of(), hints("3 m away it is cold enough.", "Measure here and 3 m away."));
    assertEquals(List.of(), hints("If the fan stands and hums, replace the capacitor."));
  }

  @Test
  void aDescriptionIsNoCommand() {
    assertEquals(
        List.of("IMPERATIVE: it begins with `the`"), hints("The fan comes off to the front."));
    assertEquals(
        List.of("IMPERATIVE: it says `must be cleaned`"), hints("Always filters must be cleaned."));
    assertEquals(List.of(), hints("When the fan stands, clean the blades."));
  }

  @Test
  void aWarningBehindItsStepIsTooLate() {
    assertEquals(
        List.of("CAUTION_FIRST: `Never reach into the …` stands behind what it warns of"),
        hints("Start the fan. Never reach into the turning fan."));
    assertEquals(List.of(), hints("Never reach into the fan. Start it from the panel."));
  }

  @Test
  void otherLanguagesAreLeftAlone() {
    PlainCheck german = new PlainCheck(kb("de", "The fan comes off."));
    assertFalse(german.applies());
    assertEquals(List.of(), german.hints());
  }

  @Test
  void hintsSayWhereTheyStand() {
    Hint hint = new PlainCheck(kb("en", "The fan comes off.")).hints().get(0);
    assertEquals("fault fan-stands", hint.of());
    assertEquals(11, hint.place().line());
    assertEquals("The fan comes off.", hint.text());
  }
}
