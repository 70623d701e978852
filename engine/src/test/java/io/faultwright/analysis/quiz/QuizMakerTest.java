package io.faultwright.analysis.quiz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.analysis.quiz.QuizMaker.Made;
import io.faultwright.model.Difficulty;
import io.faultwright.model.QuizPlan;
import io.faultwright.model.QuizPlan.Line;
import io.faultwright.model.Session;
import io.faultwright.model.Value;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.ItemKind;
import io.faultwright.quiz.Quiz;
import io.faultwright.quiz.Stem;
import io.faultwright.report.QuizJson;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Which items a quiz takes, and what participants have in common. */
class QuizMakerTest {
  private static final QuizMaker MORNING = SmallQuiz.maker("morning");
  private static final List<Item> ALL = MORNING.all(3);

  private static Quiz made(long seed, int participants) {
    return MORNING.make(seed, OptionalInt.empty(), participants).quiz().orElseThrow();
  }

  private static String json(Quiz quiz) {
    return new QuizJson(SmallQuiz.knowledge()).write(SmallQuiz.session("morning"), quiz);
  }

  @Test
  void everyKindIsMade() {
    EnumSet<ItemKind> made = EnumSet.of(ItemKind.OWN);
    ALL.forEach(item -> made.add(item.kind()));
    assertEquals(EnumSet.allOf(ItemKind.class), made);
  }

  @Test
  void aSeedMakesTheSameBytes() {
    String first = json(made(11, 3));
    assertEquals(first, json(SmallQuiz.quiz("morning", 11, 3)));
    assertNotEquals(first, json(made(12, 3)));
  }

  @Test
  void neighboursGetTheSameItemsWithOtherFigures() {
    Quiz quiz = made(11, 2);
    List<Item> one = quiz.variants().get(0).items();
    List<Item> other = quiz.variants().get(1).items();
    assertEquals(one.stream().map(Item::id).toList(), other.stream().map(Item::id).toList());
    int shown = 0;
    for (int i = 0; i < one.size(); i++) {
      Item mine = one.get(i);
      assertEquals(contents(mine), contents(other.get(i)), mine.id());
      if (hasFigures(mine)) {
        shown++;
        assertNotEquals(mine.stem(), other.get(i).stem(), mine.id());
      }
    }
    assertTrue(shown >= 3, "items with figures: " + shown);
  }

  private static Set<Object> contents(Item item) {
    return item.kind() == ItemKind.SAFE_ORDER
        ? Set.of()
        : item.choices().stream().map(choice -> choice.content()).collect(Collectors.toSet());
  }

  private static boolean hasFigures(Item item) {
    return item.stem() instanceof Stem.AgainstLimits
        || item.stem().shown().stream()
            .flatMap(shown -> shown.situation().readings().values().stream())
            .anyMatch(Value.Number.class::isInstance);
  }

  @Test
  void theBlueprintIsKept() {
    List<Item> items = made(5, 1).variants().get(0).items();
    assertEquals(8, items.size());
    assertEquals(2, items.stream().filter(item -> item.kind() == ItemKind.OWN).count());
    List<Item> ice =
        items.stream()
            .filter(item -> item.kind() != ItemKind.OWN)
            .filter(item -> item.origin().symptom().equals("ice-left"))
            .toList();
    assertEquals(5, ice.size());
    assertTrue(
        ice.stream().filter(item -> item.rating().difficulty() == Difficulty.EASY).count() >= 2);
  }

  @Test
  void noTwoItemsAreAboutOneSituation() {
    Set<Object> situations = new HashSet<>();
    Set<String> ids = new HashSet<>();
    for (Item item : ALL) {
      assertTrue(situations.add(Taken.situation(item.stem())), item::toString);
      assertTrue(ids.add(item.id()), item.id());
    }
  }

  @Test
  void onlyTaughtMachinesAreShown() {
    for (Item item : SmallQuiz.maker("evening").all(1)) {
      item.stem()
          .shown()
          .ifPresent(
              shown -> assertEquals("TN-1", shown.situation().equipment().get("model"), item.id()));
    }
  }

  @Test
  void withoutABlueprintTheSymptomsTakeTurns() {
    Quiz quiz = MORNING.make(1, OptionalInt.of(12), 1).quiz().orElseThrow();
    assertEquals(12, quiz.variants().get(0).items().size());
    assertEquals(5, SmallQuiz.quiz("evening", 1, 1).variants().get(0).items().size());
  }

  /** The longest item about the warm room has two readings: nothing about it is hard. */
  @Test
  void aBlueprintThatCannotBeMetSaysHowManyThereAre() {
    Session session = SmallQuiz.session("morning");
    QuizPlan plan = session.quiz().orElseThrow();
    Line line = new Line(session.place(), "room-warm", 4, Optional.of(Difficulty.HARD));
    QuizPlan hard =
        new QuizPlan(plan.place(), 4, 70, List.of(line), new TreeMap<>(), new TreeMap<>());
    Made made =
        new QuizMaker(SmallQuiz.knowledge(), with(session, hard)).make(1, OptionalInt.empty(), 1);
    assertEquals(Optional.empty(), made.quiz());
    assertEquals(
        List.of(new Shortage(session.place(), "room-warm", Optional.of(Difficulty.HARD), 4, 0)),
        made.missing());
    int most = ALL.size();
    Made all = MORNING.make(3, OptionalInt.of(most + 50), 1);
    assertEquals(most, all.missing().get(0).found());
  }

  private static Session with(Session session, QuizPlan plan) {
    return new Session(
        session.id(),
        session.place(),
        session.title(),
        session.about(),
        session.date(),
        session.handInBy(),
        session.symptoms(),
        session.families(),
        session.pages(),
        session.sequences(),
        session.examples(),
        Optional.of(plan));
  }
}
