package io.faultwright.analysis.quiz;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.quiz.Quiz;
import io.faultwright.resolve.Resolution;
import io.faultwright.resolve.Resolver;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.OptionalInt;

/** A small knowledge base of which every kind of item can be made. */
final class SmallQuiz {
  static final Path FOLDER = Path.of("src/test/resources/quiz");

  private static final Resolution READ = Resolver.resolution(FolderReader.read(FOLDER));

  private SmallQuiz() {}

  static KnowledgeBase knowledge() {
    return READ.knowledge();
  }

  static Session session(String id) {
    return READ.sessions().get(id);
  }

  static QuizMaker maker(String session) {
    return new QuizMaker(knowledge(), session(session));
  }

  /** The quiz of a session as it plans. */
  static Quiz quiz(String session, long seed, int participants) {
    return maker(session).make(seed, OptionalInt.empty(), participants).quiz().orElseThrow();
  }
}
