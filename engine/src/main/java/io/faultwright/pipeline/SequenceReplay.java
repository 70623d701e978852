package io.faultwright.pipeline;

import io.faultwright.finding.EventCourse;
import io.faultwright.finding.EventCourse.Entry;
import io.faultwright.finding.Finding;
import io.faultwright.model.Build;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Apart;
import io.faultwright.model.Situation;
import io.faultwright.operation.Line;
import io.faultwright.operation.Program;
import io.faultwright.operation.Recorder;
import io.faultwright.operation.Restless;
import io.faultwright.operation.Timeline;
import io.faultwright.source.Place;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** Runs the course of events of a finding through the machine, which must see the same. */
final class SequenceReplay {
  private final KnowledgeBase kb;

  SequenceReplay(KnowledgeBase kb) {
    this.kb = kb;
  }

  /** Whether the machine goes through the same phases at the same steps, and shows the finding. */
  boolean agrees(Finding finding, Situation witness) {
    EventCourse course = finding.course().orElseThrow();
    Sequence sequence = kb.sequences().get(course.sequence());
    Recorder recorder = new Recorder(Program.of(sequence, build(witness), course.set()));
    return switch (finding.kind()) {
      case LINES_AT_ONCE -> ready(recorder, course, finding.places());
      case SEQUENCE_NEVER_RESTS -> isRestless(recorder, course);
      case ENERGISED_TOGETHER -> areOn(gone(recorder, course), course, finding.places().get(0));
      default -> sameWay(gone(recorder, course), course);
    };
  }

  private Build build(Situation witness) {
    return kb.equipment().builds().stream()
        .filter(build -> is(build, witness))
        .findFirst()
        .orElseThrow();
  }

  private static boolean is(Build build, Situation witness) {
    String model = witness.equipment().get(Equipment.MODEL);
    return build.model().id().equals(model) && build.facts().equals(witness.equipment());
  }

  private static long step(Recorder recorder, BigFraction seconds) {
    return seconds.divide(recorder.machine().program().sequence().step()).longValue();
  }

  private static void happen(Recorder recorder, List<Entry> entries) {
    for (Entry entry : entries) {
      entry.event().ifPresent(event -> recorder.happen(step(recorder, entry.seconds()), event));
    }
  }

  private static Timeline gone(Recorder recorder, EventCourse course) {
    happen(recorder, course.entries());
    return recorder.upTo(step(recorder, course.end()));
  }

  private static boolean sameWay(Timeline timeline, EventCourse course) {
    List<String> told =
        course.entries().stream()
            .filter(entry -> entry.phase().isPresent())
            .map(entry -> entry.seconds() + " " + entry.phase().orElseThrow())
            .toList();
    List<String> gone =
        timeline.stays().stream()
            .map(stay -> timeline.seconds(stay.from()) + " " + stay.phase())
            .toList();
    return gone.size() >= told.size() && told.equals(gone.subList(0, told.size()));
  }

  private static boolean areOn(Timeline timeline, EventCourse course, Place place) {
    Apart apart =
        timeline.program().sequence().apart().stream()
            .filter(one -> one.place().equals(place))
            .findFirst()
            .orElseThrow();
    long on = apart.outputs().stream().filter(timeline.onAtEnd()::contains).count();
    return sameWay(timeline, course) && on > 1;
  }

  private static boolean isRestless(Recorder recorder, EventCourse course) {
    try {
      gone(recorder, course);
      return false;
    } catch (Restless restless) {
      return true;
    }
  }

  /** Whether both lines could be taken when the last event has come, or none is left to come. */
  private static boolean ready(Recorder recorder, EventCourse course, List<Place> places) {
    List<Entry> events =
        course.entries().stream().filter(entry -> entry.event().isPresent()).toList();
    long end = step(recorder, course.end());
    for (int before = events.size(); before >= Math.max(0, events.size() - 1); before--) {
      Recorder again = new Recorder(recorder.machine().program());
      happen(again, events.subList(0, before));
      again.machine().passTo(end);
      if (areReady(again, places, before < events.size())) {
        return true;
      }
    }
    return false;
  }

  private static boolean areReady(Recorder recorder, List<Place> places, boolean withEvent) {
    Program program = recorder.machine().program();
    Line[] lines = program.lines(recorder.machine().phase());
    return places.stream()
        .allMatch(
            place ->
                Arrays.stream(lines)
                    .filter(line -> line.source().place().equals(place))
                    .anyMatch(line -> canBeTaken(recorder, line, withEvent)));
  }

  private static boolean canBeTaken(Recorder recorder, Line line, boolean withEvent) {
    return line.waits() == withEvent && recorder.machine().isReady(line);
  }
}
