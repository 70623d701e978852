package io.faultwright.pipeline;

import io.faultwright.analysis.quiz.QuizMaker;
import io.faultwright.analysis.quiz.QuizMaker.Made;
import io.faultwright.analysis.quiz.Shortage;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.finding.Finding;
import io.faultwright.model.Difficulty;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.quiz.Quiz;
import io.faultwright.resolve.Resolution;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.OptionalInt;

/** Makes the quiz of a session, after its items were checked against the rules. */
public final class QuizRun {
  private final KnowledgeBase kb;
  private final Session session;
  private final Watch watch;

  /**
   * For a session of the knowledge base in these files.
   *
   * @throws Unreadable with every problem of every file, or where there is no such session or it
   *     has no quiz
   */
  public QuizRun(Sources sources, String id, Watch watch) {
    watch.phase("read");
    Resolution resolution = Resolver.resolution(sources);
    this.kb = resolution.knowledge();
    this.session = session(resolution, id);
    this.watch = watch;
  }

  private static Session session(Resolution resolution, String id) {
    Session found = TaughtSession.of(resolution.sessions(), id);
    if (found.quiz().isEmpty()) {
      throw unreadable(
          new Problem(
              List.of(found.place()), "session `" + id + "` has no quiz", "add `quiz:` to it"));
    }
    return found;
  }

  private static Unreadable unreadable(Problem problem) {
    return new Unreadable(List.of(problem));
  }

  public KnowledgeBase knowledge() {
    return kb;
  }

  public Session session() {
    return session;
  }

  /** Own items that the rules contradict, and items to be withdrawn. */
  public List<Finding> findings() {
    watch.phase("own items");
    return ItemCheck.findings(kb, List.of(session));
  }

  /**
   * The quiz.
   *
   * @param items how many; absent: as the session plans
   * @throws Unreadable where there are not as many items as it asks for
   */
  public Quiz make(long seed, OptionalInt items, int participants) {
    watch.phase("items");
    Made made = new QuizMaker(kb, session).make(seed, items, participants);
    return made.quiz()
        .orElseThrow(() -> new Unreadable(made.missing().stream().map(QuizRun::problem).toList()));
  }

  private static Problem problem(Shortage missing) {
    String about = missing.symptom().isEmpty() ? "in all" : "about `" + missing.symptom() + "`";
    String difficulty = missing.difficulty().map(Difficulty::word).map(w -> w + " ").orElse("");
    return new Problem(
        List.of(missing.place()),
        "%d %sitems %s are asked for, there are %d"
            .formatted(missing.wanted(), difficulty, about, missing.found()),
        missing.found() == 0
            ? "ask for other ones, or teach more families"
            : "ask for " + missing.found() + " at most, or teach more families");
  }
}
