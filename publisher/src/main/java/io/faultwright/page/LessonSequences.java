package io.faultwright.page;

import io.faultwright.model.Sequence;
import io.faultwright.model.Session;
import io.faultwright.model.Session.TaughtSequence;
import io.faultwright.page.LessonDrawing.Setting;
import io.faultwright.page.LessonSheet.DisplayPage;
import io.faultwright.page.LessonSheet.Leaf;
import io.faultwright.page.LessonSheet.PhasePage;
import io.faultwright.page.LessonSheet.SequencePage;
import io.faultwright.page.LessonSheet.TimesPage;
import io.faultwright.page.LessonSheet.TimingPage;
import io.faultwright.page.SequenceSection.CourseItem;
import io.faultwright.page.SequenceSection.PhaseRow;
import io.faultwright.page.SequenceSection.SideBySide;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The sequences of operation that a session shows. On a screen each phase has a page, and a long
 * table of displays has several; on paper tables stand whole.
 */
final class LessonSequences {
  private static final int ROWS_ON_SCREEN = 5;

  private final Desk desk;
  private final Setting setting;
  private final Session session;

  LessonSequences(Desk desk, Setting setting, Session session) {
    this.desk = desk;
    this.setting = setting;
    this.session = session;
  }

  List<Leaf> leaves() {
    return session.sequences().stream().flatMap(this::leaves).toList();
  }

  private Stream<Leaf> leaves(TaughtSequence taught) {
    Sequence sequence = desk.kb().sequences().get(taught.sequence()).showing(taught.courses());
    SequenceSection section =
        new SequenceSections(desk, setting.isPaper(), session::teaches).of(sequence);
    List<Leaf> leaves = new ArrayList<>();
    leaves.add(new SequencePage(desk.say("Sequence of operation"), section.title(), section));
    if (!setting.isPaper()) {
      section.phases().stream().map(phase -> phase(section, phase)).forEach(leaves::add);
    }
    if (!section.times().isEmpty()) {
      leaves.add(new TimesPage(section.title(), desk.say("Times"), section));
    }
    section.courses().forEach(course -> course(section, course, leaves));
    return leaves.stream();
  }

  private static Leaf phase(SequenceSection section, PhaseRow phase) {
    return new PhasePage(section.title(), phase.number() + " " + phase.title(), phase);
  }

  private void course(SequenceSection section, CourseItem course, List<Leaf> leaves) {
    if (setting.isPaper()) {
      leaves.add(new DisplayPage(section.title(), course.title(), course, 0));
    } else {
      course.tables().forEach(table -> displays(section, course, table, leaves));
    }
    String over = section.title() + ": " + course.title();
    course.timings().forEach(timing -> leaves.add(new TimingPage(over, timing.machines(), timing)));
  }

  private void displays(
      SequenceSection section, CourseItem course, SideBySide table, List<Leaf> leaves) {
    int rows = table.rows().size();
    int pages = Math.max(1, (rows + ROWS_ON_SCREEN - 1) / ROWS_ON_SCREEN);
    for (int page = 0; page < pages; page++) {
      int from = page * rows / pages;
      String over = pages == 1 ? section.title() : numbered(section, page + 1, pages);
      SideBySide part = table.rows(from, (page + 1) * rows / pages);
      leaves.add(new DisplayPage(over, course.title(), course.with(part), from));
    }
  }

  private String numbered(SequenceSection section, int page, int pages) {
    return desk.say("{0}, page {1} of {2}", section.title(), page, pages);
  }
}
