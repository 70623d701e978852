package io.faultwright.pipeline;

import io.faultwright.finding.EventCourse;
import io.faultwright.finding.EventCourse.Entry;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Build;
import io.faultwright.model.Conclusion;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Course;
import io.faultwright.model.Sequence.Outcome;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import io.faultwright.operation.Courses;
import io.faultwright.operation.OutcomeReadings;
import io.faultwright.operation.Outcomes;
import io.faultwright.operation.Program;
import io.faultwright.operation.Restless;
import io.faultwright.operation.Timeline;
import io.faultwright.run.Runner;
import io.faultwright.run.Trace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Whether the rules allow what the sequences tell: the course of a fault ends with some outcome,
 * and no symptom may rule that fault out by it.
 */
final class CourseChecks {
  private final KnowledgeBase kb;
  private final Runner runner;

  CourseChecks(KnowledgeBase kb, Runner runner) {
    this.kb = kb;
    this.runner = runner;
  }

  /**
   * One finding for each course and symptom, on the first build that shows it.
   *
   * @param concerned ids of the symptoms to look at
   */
  List<Finding> findings(Predicate<String> concerned) {
    return kb.sequences().values().stream()
        .filter(sequence -> !sequence.outcomes().isEmpty())
        .flatMap(sequence -> sequence.courses().stream().flatMap(course -> of(sequence, course)))
        .filter(finding -> finding.symptom().filter(concerned).isPresent())
        .toList();
  }

  private Stream<Finding> of(Sequence sequence, Course course) {
    return course
        .fault()
        .map(
            fault ->
                symptoms(sequence, fault).flatMap(s -> of(sequence, course, fault, s).stream()))
        .orElse(Stream.of());
  }

  /** The symptoms that can conclude a fault, and ask for an outcome of the sequence. */
  private Stream<Symptom> symptoms(Sequence sequence, String fault) {
    Set<String> outcomes = new HashSet<>();
    sequence.outcomes().stream().map(Outcome::reading).forEach(outcomes::add);
    return kb.symptoms().values().stream()
        .filter(symptom -> symptom.rules().values().stream().anyMatch(rule -> tells(rule, fault)))
        .filter(
            symptom ->
                symptom.rules().values().stream()
                    .flatMap(rule -> rule.when().tests())
                    .map(Test::subject)
                    .anyMatch(outcomes::contains));
  }

  private static boolean tells(Rule rule, String fault) {
    return rule.conclusion() instanceof Conclusion.Conclude one && one.faults().contains(fault);
  }

  private Optional<Finding> of(Sequence sequence, Course course, String fault, Symptom symptom) {
    Set<List<Object>> seen = new HashSet<>();
    for (Build build : builds(sequence, course, fault, symptom)) {
      Program program = Program.of(sequence, build).with(course.set());
      if (seen.add(program.behaviour())) {
        Optional<Finding> finding = of(program, course, fault, symptom);
        if (finding.isPresent()) {
          return finding;
        }
      }
    }
    return Optional.empty();
  }

  private List<Build> builds(Sequence sequence, Course course, String fault, Symptom symptom) {
    return kb.equipment().builds().stream()
        .filter(build -> build.satisfies(sequence.applies()))
        .filter(build -> build.satisfies(course.applies()))
        .filter(build -> build.satisfies(kb.faults().get(fault).applies()))
        .filter(build -> build.satisfies(symptom.applies()))
        .toList();
  }

  private Optional<Finding> of(Program program, Course course, String fault, Symptom symptom) {
    try {
      Timeline timeline = Courses.follow(program, course);
      Situation situation = situation(timeline);
      Trace trace = runner.run(symptom.id(), situation);
      return trace.ruledOut().contains(fault)
          ? Optional.of(finding(course, fault, symptom, timeline, situation))
          : Optional.empty();
    } catch (Restless restless) {
      return Optional.empty();
    }
  }

  private Situation situation(Timeline timeline) {
    Program program = timeline.program();
    OutcomeReadings tells = new OutcomeReadings(program.sequence(), kb.readings());
    SortedMap<String, Value> values = new TreeMap<>(tells.settings(program));
    values.putAll(tells.of(Outcomes.of(timeline)));
    return new Situation(program.build().facts(), values);
  }

  private static Finding finding(
      Course course, String fault, Symptom symptom, Timeline timeline, Situation situation) {
    return Finding.of(
            FindingKind.COURSE_DIFFERS,
            course.place(),
            "after the course `"
                + course.id()
                + "` the rules of `"
                + symptom.id()
                + "` rule its fault `"
                + fault
                + "` out",
            "no rule that concludes it allows these readings; mend the rules, or the course")
        .in(symptom.id(), List.of())
        .shownBy(situation, told(timeline));
  }

  private static EventCourse told(Timeline timeline) {
    List<Entry> entries = new ArrayList<>();
    timeline
        .events()
        .forEach(one -> entries.add(Entry.of(timeline.seconds(one.step()), one.event())));
    timeline
        .stays()
        .forEach(stay -> entries.add(Entry.of(timeline.seconds(stay.from()), stay.phase())));
    entries.sort(Comparator.comparing(Entry::seconds));
    return new EventCourse(
        timeline.program().sequence().id(),
        new TreeMap<>(timeline.program().set()),
        entries,
        timeline.seconds(timeline.end()));
  }
}
