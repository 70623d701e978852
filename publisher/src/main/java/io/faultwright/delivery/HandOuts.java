package io.faultwright.delivery;

import io.faultwright.grading.QuizKeys;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.page.Frames;
import io.faultwright.quiz.Choice;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Quiz;
import io.faultwright.quiz.Quiz.Variant;
import io.faultwright.quiz.QuizWording;
import java.time.LocalDate;
import java.util.List;

/** What the participants get of a quiz. */
public final class HandOuts {
  private final KnowledgeBase kb;
  private final QuizWording words;

  /**
   * @param kb in the language in which the quiz is written
   */
  public HandOuts(KnowledgeBase kb) {
    this.kb = kb;
    this.words = new QuizWording(kb);
  }

  /** One for each participant, by number. */
  public List<HandOut> of(Session session, Quiz quiz, QuizKeys keys) {
    return quiz.variants().stream().map(variant -> of(session, variant, keys)).toList();
  }

  private HandOut of(Session session, Variant variant, QuizKeys keys) {
    return new HandOut(
        Frames.of(kb.handbook(), false),
        session.id(),
        session.title(),
        keys.quiz(),
        variant.participant(),
        keys.of(variant.participant()),
        session.handInBy().map(LocalDate::toString),
        variant.items().stream().map(this::question).toList());
  }

  private Question question(Item item) {
    return new Question(
        item.id(),
        words.known(item),
        words.question(item),
        item.choices().stream().map(this::text).toList());
  }

  private String text(Choice choice) {
    return words.choice(choice);
  }
}
