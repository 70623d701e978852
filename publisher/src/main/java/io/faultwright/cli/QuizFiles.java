package io.faultwright.cli;

import io.faultwright.delivery.AnswerTables;
import io.faultwright.delivery.HandOut;
import io.faultwright.delivery.HandOuts;
import io.faultwright.grading.QuizKeys;
import io.faultwright.layout.Paper;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.quiz.Quiz;
import io.faultwright.render.html.HandOutHtml;
import io.faultwright.render.html.PaperHtml;
import io.faultwright.render.pdf.PdfBook;
import io.faultwright.render.pdf.PdfPrinter;
import io.faultwright.render.qti.QtiPackage;
import io.faultwright.report.QuizJson;
import io.faultwright.report.QuizText;
import java.io.IOException;
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
  private final QuizKeys keys;
  private final List<HandOut> handOuts;
  private final SortedMap<String, byte[]> files = new TreeMap<>();

  /**
   * @param kb in the language in which the quiz is written
   */
  QuizFiles(KnowledgeBase kb, Session session, Quiz quiz) {
    this.kb = kb;
    this.session = session;
    this.quiz = quiz;
    this.keys = new QuizJson(kb).keys(session, quiz);
    this.handOuts = new HandOuts(kb).of(session, quiz, keys);
  }

  /** Every file by its path, but for those on paper. */
  SortedMap<String, byte[]> all() {
    put("quiz.json", new QuizJson(kb).write(session, quiz));
    put("quiz.txt", new QuizText(kb).write(session, quiz));
    put("issued.yaml", QuizText.issued(quiz));
    files.put("qti.zip", qti());
    HandOutHtml html = new HandOutHtml();
    handOuts.forEach(one -> put(GIVEN + one.name() + ".html", html.print(one)));
    return files;
  }

  /**
   * Adds the quiz on paper, a table for what is ticked on it, and the numbers that are right.
   *
   * @return characters that the typeface of the paper lacks
   */
  String paper() throws IOException {
    String html = new PaperHtml().print(handOuts, Paper.A4);
    PdfBook pdf = new PdfPrinter().print(html, kb.handbook().date());
    files.put("paper.pdf", pdf.bytes());
    put("answers.csv", AnswerTables.toFill(quiz));
    put("key.csv", AnswerTables.key(quiz));
    return pdf.undrawn();
  }

  /** What the first participant gets: a learning system gives everybody the same. */
  private byte[] qti() {
    return new QtiPackage(kb.handbook().language(), keys.quiz(), session.title())
        .bytes(new HandOuts(kb).solved(quiz.variants().get(0)));
  }

  private void put(String path, String text) {
    files.put(path, text.getBytes(StandardCharsets.UTF_8));
  }
}
