package io.faultwright.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.Difficulty;
import io.faultwright.quiz.Choice;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Item.Explanation;
import io.faultwright.quiz.Item.Origin;
import io.faultwright.quiz.Item.Rating;
import io.faultwright.quiz.Link;
import io.faultwright.quiz.Quiz;
import io.faultwright.quiz.Quiz.Variant;
import io.faultwright.render.html.HandOutHtml;
import io.faultwright.site.HtmlCheck;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What can be read in the source of a participant's page, and what cannot. */
class HandOutTest {
  private final SmallQuiz small = SmallQuiz.MADE;

  private String page(Quiz quiz, int participant) {
    HandOuts handOuts = new HandOuts(small.kb());
    return new HandOutHtml()
        .print(handOuts.of(small.session(), quiz, small.keys()).get(participant - 1));
  }

  /** The same questions and choices, with another choice right, for other reasons, harder. */
  private static Quiz withOtherAnswers(Quiz quiz) {
    return new Quiz(
        quiz.session(), quiz.seed(), quiz.variants().stream().map(HandOutTest::other).toList());
  }

  private static Variant other(Variant variant) {
    return new Variant(
        variant.participant(), variant.items().stream().map(HandOutTest::other).toList());
  }

  private static Item other(Item item) {
    int right = (item.right() + 1) % item.choices().size();
    List<Choice> choices =
        IntStream.range(0, item.choices().size())
            .mapToObj(
                i ->
                    i == right
                        ? Choice.right(item.choices().get(i).content())
                        : Choice.wrong(item.choices().get(i).content()))
            .toList();
    Origin origin = item.origin();
    return new Item(
        item.id(),
        item.stem(),
        choices,
        new Origin(origin.symptom(), new TreeSet<>(), origin.footing(), "0011223344556677"),
        new Explanation(List.of(), Link.fault("charge-low")),
        new Rating(99, Difficulty.HARD));
  }

  @Test
  void thePageIsTheSameWhicheverChoiceIsRight() {
    for (int participant = 1; participant <= 3; participant++) {
      assertEquals(
          page(small.quiz(), participant), page(withOtherAnswers(small.quiz()), participant));
    }
  }

  /** So that the test above compares pages that could differ. */
  @Test
  void thePageShowsWhatIsAsked() {
    assertNotEquals(page(small.quiz(), 1), page(small.quiz(), 2));
    String page = page(small.quiz(), 1);
    for (Question question : small.handOut(1).questions()) {
      assertTrue(page.contains(question.id()), question.id());
      assertTrue(question.choices().size() >= Item.FEWEST);
    }
    assertTrue(page.contains("Gloves and goggles."));
    assertFalse(page.contains("The circuit is under pressure."), "an explanation");
  }

  /**
   * Scripts, styles and addresses stand where the policy allows them, and nowhere else. The checker
   * does not know policies by fingerprint; the browser test does.
   */
  @Test
  void thePageIsWellFormedAndNeedsNothingElse(@TempDir Path folder) throws Exception {
    String page = page(small.quiz(), 1);
    Path file = folder.resolve("page.html");
    Files.writeString(file, page.replaceFirst("<meta http-equiv[^>]*>", ""));
    assertEquals(List.of(), HtmlCheck.errors(file));
    assertTrue(page.contains("content=\"default-src 'none'; script-src 'sha256-"), page);
    for (String unwanted : List.of("unsafe", "style=\"", " on[a-z]+=\"", "src=\"", "https?:")) {
      assertFalse(Pattern.compile(unwanted).matcher(page).find(), unwanted);
    }
  }

  @Test
  void filesAreNamedByTheNumber() {
    assertEquals("morning-003", small.handOut(3).name());
  }
}
