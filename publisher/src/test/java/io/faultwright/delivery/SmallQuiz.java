package io.faultwright.delivery;

import io.faultwright.grading.QuizKeys;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.pipeline.QuizRun;
import io.faultwright.pipeline.Watch;
import io.faultwright.quiz.Quiz;
import io.faultwright.report.QuizJson;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.OptionalInt;

/** The quiz of the small knowledge base: eight items for three participants. */
public record SmallQuiz(KnowledgeBase kb, Session session, Quiz quiz) {
  private static final Path BASE = Path.of("../engine/src/test/resources/quiz");

  /** Made once, since it never changes. */
  public static final SmallQuiz MADE = make();

  private static SmallQuiz make() {
    QuizRun run = new QuizRun(FolderReader.read(BASE), "morning", Watch.NOBODY);
    return new SmallQuiz(run.knowledge(), run.session(), run.make(7, OptionalInt.empty(), 3));
  }

  /** Its fingerprint and keys. */
  public QuizKeys keys() {
    return new QuizJson(kb).keys(session, quiz);
  }

  /** What a participant gets. */
  public HandOut handOut(int participant) {
    return new HandOuts(kb).of(session, quiz, keys()).get(participant - 1);
  }
}
