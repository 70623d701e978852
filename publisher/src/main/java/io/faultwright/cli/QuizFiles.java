package io.faultwright.cli;

import io.faultwright.delivery.HandOut;
import io.faultwright.delivery.HandOuts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.quiz.Quiz;
import io.faultwright.render.html.HandOutHtml;
import io.faultwright.report.QuizJson;
import io.faultwright.report.QuizText;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The files of a quiz: what the trainer keeps, and below {@code hand-out/} what is given out. */
final class QuizFiles {
  private static final String GIVEN = "hand-out/";

  private final KnowledgeBase kb;
  private final Session session;
  private final Quiz quiz;
  private final SortedMap<String, byte[]> files = new TreeMap<>();

  /**
   * @param kb in the language in which the quiz is written
   */
  QuizFiles(KnowledgeBase kb, Session session, Quiz quiz) {
    this.kb = kb;
    this.session = session;
    this.quiz = quiz;
  }

  /** Every file by its path. */
  SortedMap<String, byte[]> all() {
    QuizJson json = new QuizJson(kb);
    put("quiz.json", json.write(session, quiz));
    put("quiz.txt", new QuizText(kb).write(session, quiz));
    put("issued.yaml", QuizText.issued(quiz));
    given(new HandOuts(kb).of(session, quiz, json.keys(session, quiz)));
    return files;
  }

  private void given(List<HandOut> handOuts) {
    HandOutHtml html = new HandOutHtml();
    handOuts.forEach(one -> put(GIVEN + one.name() + ".html", html.print(one)));
  }

  private void put(String path, String text) {
    files.put(path, text.getBytes(StandardCharsets.UTF_8));
  }
}
