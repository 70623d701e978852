package io.faultwright.delivery;

import io.faultwright.grading.QuizKeys;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.page.Frames;
import io.faultwright.page.SitePaths;
import io.faultwright.page.Target;
import io.faultwright.page.Target.Kind;
import io.faultwright.quiz.Choice;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Link;
import io.faultwright.quiz.Quiz;
import io.faultwright.quiz.Quiz.Variant;
import io.faultwright.quiz.QuizWording;
import java.time.LocalDate;
import java.util.List;

/** A quiz as it is given out, in words: with its answers and without them. */
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

  /** The questions of one participant with their answers. */
  public List<Solved> solved(Variant variant) {
    return variant.items().stream().map(this::solved).toList();
  }

  private Solved solved(Item item) {
    Link page = item.explanation().page();
    String path = SitePaths.file(new Target(Kind.valueOf(page.kind().name()), page.id()));
    return new Solved(
        question(item),
        item.right() + 1,
        words.explanation(item),
        words.title(page),
        kb.handbook().base().map(base -> base.replaceFirst("/+$", "") + "/" + path));
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
