package io.faultwright.report;

import io.faultwright.finding.EventCourse;
import io.faultwright.finding.EventCourse.Entry;
import io.faultwright.wording.Clock;
import io.faultwright.wording.EventText;
import java.util.ArrayList;
import java.util.List;

/** A course of events for people, line by line as a log is written. */
final class CourseText {
  private CourseText() {}

  static List<String> lines(EventCourse course) {
    List<String> lines = new ArrayList<>();
    course.set().forEach((id, seconds) -> lines.add(id + " set to " + Clock.lasting(seconds)));
    course.entries().forEach(entry -> lines.add(line(entry)));
    boolean later =
        course.entries().stream().noneMatch(entry -> entry.seconds().equals(course.end()));
    if (later) {
      lines.add(Clock.of(course.end()) + " still so");
    }
    return lines;
  }

  private static String line(Entry entry) {
    return Clock.of(entry.seconds()) + " " + what(entry);
  }

  /** An event as it is written in a log, or the phase that begins. */
  static String what(Entry entry) {
    return entry.event().map(EventText::of).orElseGet(() -> "phase " + entry.phase().orElseThrow());
  }
}
