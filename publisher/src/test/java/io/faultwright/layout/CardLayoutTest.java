package io.faultwright.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.flow.Card;
import io.faultwright.flow.CardBuilder;
import io.faultwright.flow.Demos;
import io.faultwright.flow.Imprint;
import io.faultwright.flow.Warning;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Pocket cards fit a quarter of a sheet, and say what they leave out. */
class CardLayoutTest {
  static Stream<Arguments> cards() {
    return Demos.all().stream()
        .flatMap(
            kb ->
                kb.symptoms().values().stream()
                    .map(
                        symptom ->
                            Arguments.of(
                                symptom.id(),
                                CardBuilder.build(SymptomSpace.of(kb, symptom), "all equipment"),
                                Imprint.of(kb.handbook(), false))));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cards")
  void everySymptomFitsItsCard(String id, Card card, Imprint imprint) {
    for (Paper paper : Paper.values()) {
      check(card, new CardLayout(imprint, paper).card(card), paper);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cards")
  void fourCardsStandOnOneSheet(String id, Card card, Imprint imprint) {
    CardLayout layout = new CardLayout(imprint, Paper.A4);
    ChartPage one = layout.card(card);
    ChartPage four = layout.fourUp(one);
    assertEquals(4 * one.texts().size(), four.texts().size());
    assertEquals(List.of(595, 842), List.of(four.width(), four.height()));
    checkTexts(four);
  }

  /** Sixty outcomes with their readings cannot stand there; the others are named. */
  @Test
  void whatDoesNotFitIsNamed() {
    List<Card.Entry> entries =
        IntStream.range(0, 60)
            .mapToObj(i -> new Card.Entry(i % 3, "ice: untouched", "Valve " + i))
            .toList();
    Card card = new Card("Ice", "", List.of(), List.of(), List.of(), entries);
    ChartPage page = new CardLayout(SampleCharts.IMPRINT, Paper.A4).card(card);
    check(card, page, Paper.A4);
    assertTrue(words(page).contains(" For these see the chart Valve "), words(page));
  }

  /** Where the list is cut, no condition is left without what it shows. */
  @Test
  void noConditionStandsAlone() {
    List<Card.Entry> entries =
        IntStream.range(0, 60)
            .mapToObj(i -> new Card.Entry(0, "reading " + i, i % 2 == 0 ? "" : "Valve " + i))
            .toList();
    Card card = new Card("Ice", "", List.of(), List.of(), List.of(), entries);
    String words = words(new CardLayout(SampleCharts.IMPRINT, Paper.A4).card(card));
    assertTrue(words.matches(".*Valve [0-9]+ For these see the chart.*"), words);
  }

  /** A caution and a list that no card can hold leave the title and where everything stands. */
  @Test
  void endlessTextsLeaveTheTitle() {
    List<Card.Entry> entries =
        IntStream.range(0, 500).mapToObj(i -> new Card.Entry(0, "", "Valve " + i)).toList();
    ChartPage page =
        new CardLayout(SampleCharts.IMPRINT, Paper.A4)
            .card(new Card("Ice", "", List.of(), List.of(), List.of(), entries));
    checkTexts(page);
    assertTrue(words(page).contains("For these see the chart Everything"), words(page));
  }

  @Test
  void theGravestCautionComesFirst() {
    List<Warning> warnings =
        List.of(new Warning("CAUTION", true, "Hot."), new Warning("DANGER", true, "Live."));
    Card card = new Card("Ice", "", warnings, List.of(), List.of(), List.of());
    String words = words(new CardLayout(SampleCharts.IMPRINT, Paper.A4).card(card));
    assertTrue(words.indexOf("DANGER") < words.indexOf("CAUTION"), words);
  }

  private static void check(Card card, ChartPage page, Paper paper) {
    assertEquals(paper.width() / 2, page.width());
    assertEquals(paper.height() / 2, page.height());
    checkTexts(page);
    String words = words(page);
    card.entries().forEach(entry -> assertTrue(words.contains(entry.outcome()), words));
    assertFalse(words.contains("…"), words);
  }

  private static String words(ChartPage page) {
    return page.texts().stream().map(Text::content).collect(Collectors.joining(" "));
  }

  private static void checkTexts(ChartPage page) {
    List<Text> texts = page.texts();
    for (int i = 0; i < texts.size(); i++) {
      Text text = texts.get(i);
      assertTrue(text.size() >= 8, () -> "small: " + text);
      Box box = text.box();
      assertTrue(
          page.frame().stream()
              .filter(shape -> shape.kind() == Shape.Kind.FRAME)
              .map(Shape::box)
              .anyMatch(
                  frame ->
                      frame.x() < box.x()
                          && frame.y() < box.y()
                          && box.right() < frame.right()
                          && box.bottom() < frame.bottom()),
          () -> "outside: " + text);
      for (int j = 0; j < i; j++) {
        Box other = texts.get(j).box();
        assertFalse(
            new Box(box.x() + 0.5, box.y() + 0.5, box.width() - 1, box.height() - 1)
                .overlaps(other),
            () -> "overlap: " + text);
      }
      page.frame().stream()
          .filter(shape -> shape.kind() != Shape.Kind.FRAME)
          .forEach(shape -> assertFalse(box.overlaps(shape.box()), () -> "on a symbol: " + text));
    }
  }
}
