package io.faultwright.lesson;

import io.faultwright.layout.Paper;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.page.LessonSource;
import io.faultwright.page.LessonSource.Drawn;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Works out what the pages of a session show. */
public final class Lesson {
  private Lesson() {}

  /**
   * Works its examples and draws its charts.
   *
   * @param kb in the language in which the pages are written
   * @param draft whether its rules still have errors, which every page says
   * @param pictures of the knowledge base, by their path in the {@code guides} folder
   */
  public static LessonSource of(
      KnowledgeBase kb,
      Session session,
      boolean draft,
      SortedMap<String, byte[]> pictures,
      Paper paper) {
    LessonCharts charts = new LessonCharts(kb, draft, paper);
    SortedMap<String, List<Drawn>> drawn = new TreeMap<>();
    session.symptoms().forEach(id -> drawn.put(id, charts.taught(kb.symptoms().get(id), session)));
    WorkedExamples examples = new WorkedExamples(kb, charts);
    return new LessonSource(
        kb,
        session,
        draft,
        pictures,
        drawn,
        session.examples().stream().map(examples::work).toList());
  }
}
