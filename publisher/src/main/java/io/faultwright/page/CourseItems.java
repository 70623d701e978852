package io.faultwright.page;

import io.faultwright.layout.TimingLayout;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Course;
import io.faultwright.page.CourseRuns.Run;
import io.faultwright.page.SequenceSection.CourseItem;
import io.faultwright.page.SequenceSection.TimingFigure;
import io.faultwright.render.svg.TimingSvg;
import io.faultwright.words.Words;
import java.util.List;

/** What happens in time: displays side by side, and a timing diagram for each kind of machine. */
final class CourseItems {
  /** CSS pixels in a point of the drawing: one pixel is 1/96 inch, one point 1/72. */
  private static final double PIXELS_PER_POINT = 96.0 / 72;

  private final Desk desk;
  private final Sequence sequence;
  private final SequenceBuilds builds;
  private final boolean inBook;

  /**
   * @param inBook whether the text of drawings is lifted out
   */
  CourseItems(Desk desk, Sequence sequence, SequenceBuilds builds, boolean inBook) {
    this.desk = desk;
    this.sequence = sequence;
    this.builds = builds;
    this.inBook = inBook;
  }

  /** Where a course stands. */
  static Target target(Sequence sequence, Course course) {
    return new Target(Target.Kind.COURSE, sequence.id() + "." + course.id());
  }

  List<CourseItem> all() {
    return sequence.courses().stream().map(this::item).toList();
  }

  private CourseItem item(Course course) {
    CourseRuns runs = new CourseRuns(builds, course);
    return new CourseItem(
        target(sequence, course).anchor(),
        course.title(),
        course.fault().filter(desk.kb().faults()::containsKey).map(desk.links()::fault),
        new SideBySides(desk, sequence, builds).of(runs.alike()),
        runs.alike().stream().map(run -> figure(course, run)).toList(),
        runs.restless().isEmpty() ? "" : builds.words(runs.restless()));
  }

  private TimingFigure figure(Course course, Run run) {
    Words say = desk.words().say();
    String machines = builds.words(run.machines());
    String title = desk.say("Timing diagram: {0}, {1}", course.title(), machines);
    Drawing drawing =
        Drawing.of(
            TimingSvg.inline(
                TimingLayout.of(new Timings(desk, run.timeline()).of(title), say), say));
    List<ChartText> texts = inBook ? drawing.liftTexts(PIXELS_PER_POINT) : List.of();
    if (inBook) {
      drawing.describe(title);
    }
    return new TimingFigure(title, machines, drawing.sized(PIXELS_PER_POINT), texts);
  }
}
