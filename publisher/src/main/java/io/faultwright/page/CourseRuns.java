package io.faultwright.page;

import io.faultwright.model.Sequence.Course;
import io.faultwright.model.Sequence.Output;
import io.faultwright.operation.Courses;
import io.faultwright.operation.Program;
import io.faultwright.operation.Restless;
import io.faultwright.operation.Timeline;
import io.faultwright.operation.Timeline.Happened;
import io.faultwright.operation.Timeline.On;
import io.faultwright.operation.Timeline.Stay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What machines do in a course: those that behave alike together. */
final class CourseRuns {
  private final List<Run> runs = new ArrayList<>();
  private final List<Program> restless = new ArrayList<>();

  /** Machines that behave alike, and what one of them does. */
  record Run(List<Program> machines, Timeline timeline) {}

  private record Phase(String id, long from, long to, boolean over) {
    static Phase of(Stay stay) {
      return new Phase(stay.phase(), stay.from(), stay.to(), stay.over());
    }
  }

  /** All that can be seen from outside. */
  private record Seen(List<Phase> phases, List<Happened> events, List<List<On>> outputs) {
    static Seen of(Timeline timeline) {
      return new Seen(
          timeline.stays().stream().map(Phase::of).toList(),
          timeline.events(),
          timeline.program().sequence().outputs().stream()
              .map(Output::id)
              .map(timeline::on)
              .toList());
    }
  }

  CourseRuns(SequenceBuilds builds, Course course) {
    Map<Seen, Run> alike = new LinkedHashMap<>();
    for (Program program : builds.on(course.applies())) {
      try {
        Timeline timeline = Courses.follow(program, course);
        alike
            .computeIfAbsent(Seen.of(timeline), seen -> new Run(new ArrayList<>(), timeline))
            .machines()
            .add(program);
      } catch (Restless endless) {
        restless.add(program);
      }
    }
    runs.addAll(alike.values());
  }

  /** The groups, in the order of the first machine of each. */
  List<Run> alike() {
    return runs;
  }

  /** Machines on which phases follow each other without end. */
  List<Program> restless() {
    return restless;
  }
}
