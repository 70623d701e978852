package io.faultwright.guided;

import io.faultwright.json.Fields;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Course;
import io.faultwright.operation.Courses;
import io.faultwright.operation.Program;
import io.faultwright.operation.Restless;
import io.faultwright.operation.Shown;
import io.faultwright.operation.Timeline;
import io.faultwright.quantity.Decimals;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;

/** What the display says with each fault, and for how long, on each build. */
final class DisplayData {
  private final KnowledgeBase kb;
  private final BuildNumbers builds;

  DisplayData(KnowledgeBase kb, BuildNumbers builds) {
    this.kb = kb;
    this.builds = builds;
  }

  /** One entry for each course of these faults and builds that behave alike. */
  List<Fields> of(SortedSet<String> faults) {
    List<Fields> all = new ArrayList<>();
    for (Sequence sequence : kb.sequences().values()) {
      for (Course course : sequence.courses()) {
        course
            .fault()
            .filter(faults::contains)
            .ifPresent(fault -> all.addAll(of(sequence, course, fault)));
      }
    }
    return all;
  }

  private List<Fields> of(Sequence sequence, Course course, String fault) {
    Map<List<Object>, List<Build>> alike = new LinkedHashMap<>();
    for (Build build : builds.all()) {
      if (build.satisfies(sequence.applies()) && build.satisfies(course.applies())) {
        List<Object> behaviour = Program.of(sequence, build).with(course.set()).behaviour();
        alike.computeIfAbsent(behaviour, none -> new ArrayList<>()).add(build);
      }
    }
    List<Fields> entries = new ArrayList<>();
    for (List<Build> some : alike.values()) {
      try {
        entries.add(entry(Courses.follow(Program.of(sequence, some.get(0)), course), fault, some));
      } catch (Restless restless) {
        // The check tells it; nothing is known of what the display says.
        entries.clear();
      }
    }
    return entries;
  }

  private Fields entry(Timeline timeline, String fault, List<Build> some) {
    return new Fields()
        .put("fault", fault)
        .put("builds", builds.of(some))
        .put("shows", Shown.of(timeline).stream().map(one -> shows(timeline, one)).toList());
  }

  /** The display, and seconds at least and at most; without the last where nothing ends it. */
  private static List<String> shows(Timeline timeline, Shown one) {
    String least = seconds(timeline, one.least());
    return one.most() == Program.NEVER
        ? List.of(one.display(), least)
        : List.of(one.display(), least, seconds(timeline, one.most()));
  }

  private static String seconds(Timeline timeline, long steps) {
    return Decimals.show(timeline.seconds(steps));
  }
}
