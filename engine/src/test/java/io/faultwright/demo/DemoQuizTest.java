package io.faultwright.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.quiz.DroolsJudge;
import io.faultwright.analysis.quiz.QuizMaker;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.QuizWording;
import io.faultwright.resolve.Resolution;
import io.faultwright.resolve.Resolver;
import io.faultwright.syntax.FolderReader;
import io.faultwright.translation.Translation;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Items over the walk-in freezers, of one complaint with limits, software versions and referrals;
 * {@code -Ddemo.quiz=symptom,symptom} looks at others.
 */
class DemoQuizTest {
  private static final int SAMPLE = 60;

  private static final Resolution READ =
      Resolver.resolution(FolderReader.read(Path.of("../rules/walk-in-freezers")));
  private static final KnowledgeBase KB = READ.knowledge();
  private static final List<Item> ALL = new QuizMaker(KB, session()).all(5);

  private static Session session() {
    Session demo = READ.sessions().get("hot-gas-defrost");
    return new Session(
        demo.id(),
        demo.place(),
        demo.title(),
        demo.about(),
        demo.date(),
        demo.handInBy(),
        List.of(System.getProperty("demo.quiz", "false-stop").split(",")),
        demo.families(),
        demo.pages(),
        demo.sequences(),
        demo.examples(),
        demo.quiz());
  }

  private static List<Item> sample() {
    int stride = Math.max(1, ALL.size() / SAMPLE);
    return IntStream.range(0, ALL.size()).filter(i -> i % stride == 0).mapToObj(ALL::get).toList();
  }

  @Test
  void droolsAgrees() {
    DroolsJudge judge = new DroolsJudge(KB);
    List<Item> sample = sample();
    assertTrue(sample.size() >= SAMPLE, "items: " + ALL.size());
    sample.forEach(judge::confirm);
  }

  @Test
  void mostItemsHaveANearMiss() {
    long near = ALL.stream().filter(Item::hasNearMiss).count();
    assertTrue(near * 10 >= ALL.size() * 8L, near + " of " + ALL.size());
  }

  @Test
  void itemsReadInEveryLanguageOfTheHandbook() {
    QuizWording english = new QuizWording(KB);
    QuizWording german = new QuizWording(Translation.of(KB, "de"));
    for (Item item : sample()) {
      assertNotEquals(english.question(item), german.question(item));
      assertFalse(german.explanation(item).isEmpty(), item.id());
      for (QuizWording words : List.of(english, german)) {
        List<String> choices = item.choices().stream().map(words::choice).toList();
        assertEquals(choices.size(), choices.stream().distinct().count(), choices::toString);
        assertTrue(choices.stream().noneMatch(String::isBlank), choices::toString);
        assertTrue(item.choices().stream().map(words::nearMiss).noneMatch(Optional.of("")::equals));
      }
    }
  }

  @Test
  void theSessionOfTheDemoIsTaughtOnMachinesThatThereAre() {
    Session demo = READ.sessions().get("hot-gas-defrost");
    assertEquals(20, demo.quiz().orElseThrow().items());
    assertTrue(KB.equipment().builds().stream().allMatch(demo::teaches));
  }
}
