package io.faultwright.report;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.quiz.Choice;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Quiz;
import io.faultwright.quiz.Quiz.Variant;
import io.faultwright.quiz.QuizWording;
import io.faultwright.words.Words;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A quiz with all its answers, to read; and what to keep of it in the session file. */
public final class QuizText {
  private final QuizWording words;
  private final Words say;

  /**
   * @param kb in the language in which the quiz is written
   */
  public QuizText(KnowledgeBase kb) {
    this.words = new QuizWording(kb);
    this.say = Words.of(kb.handbook().language());
  }

  /** The listing. */
  public String write(Session session, Quiz quiz) {
    StringBuilder text = new StringBuilder();
    text.append(session.title()).append("\n");
    text.append(say.say("With answers. For the trainer only.")).append("\n");
    for (Variant variant : quiz.variants()) {
      text.append("\n").append(say.say("Participant {0}", variant.participant())).append("\n");
      for (int i = 0; i < variant.items().size(); i++) {
        write(i + 1, variant.items().get(i), text);
      }
    }
    return text.toString();
  }

  private void write(int number, Item item, StringBuilder text) {
    text.append("\n").append(number).append(".  ").append(item.id()).append("\n");
    words
        .known(item)
        .forEach(line -> text.append("    " + line.label() + ": " + line.text()).append("\n"));
    text.append("    ").append(words.question(item)).append("\n");
    for (int i = 0; i < item.choices().size(); i++) {
      Choice choice = item.choices().get(i);
      text.append(choice.right() ? "  * " : "    ")
          .append(i + 1)
          .append(") ")
          .append(words.choice(choice))
          .append(words.nearMiss(choice).map(near -> "  (" + near + ")").orElse(""))
          .append("\n");
    }
    String because = String.join(" ", words.explanation(item));
    String page = say.say("See {0}", words.title(item.explanation().page()));
    text.append("    = ").append((because + " " + page).strip()).append("\n");
  }

  /** The block {@code issued} for the session file, by which later checks withdraw items. */
  public static String issued(Quiz quiz) {
    Map<String, Item> items = new TreeMap<>();
    quiz.variants().stream()
        .map(Variant::items)
        .flatMap(List::stream)
        .filter(item -> !item.origin().meaning().isEmpty())
        .forEach(item -> items.put(item.id(), item));
    StringBuilder text = new StringBuilder();
    text.append("# Put this below `quiz:` in the file of session `" + quiz.session() + "`.\n");
    text.append("# `faultwright check` then withdraws items whose rule has changed.\n");
    text.append("issued:\n");
    items.forEach(
        (id, item) ->
            text.append(
                "  %s: { from: %s, meaning: \"%s\" }\n"
                    .formatted(id, item.origin().footing(), item.origin().meaning())));
    return text.toString();
  }
}
