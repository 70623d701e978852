package io.faultwright.pipeline;

import io.faultwright.finding.EventCourse;
import io.faultwright.finding.EventCourse.Entry;
import io.faultwright.finding.Finding;
import io.faultwright.model.Build;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Sequence.Apart;
import io.faultwright.model.Situation;
import io.faultwright.operation.Program;
import io.faultwright.operation.Recorder;
import io.faultwright.operation.Timeline;
import io.faultwright.source.Place;
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
    Program program =
        Program.of(kb.sequences().get(course.sequence()), build(witness), course.set());
    Rerun rerun = Rerun.of(program, course);
    boolean shows =
        switch (finding.kind()) {
          case LINES_AT_ONCE ->
              finding.places().size() > 1
                  ? rerun.sawAtOnce(finding.places())
                  : rerun.counted(finding.places().get(0));
          case SEQUENCE_NEVER_RESTS -> rerun.isRestless();
          case ENERGISED_TOGETHER -> areOn(program, course, finding.places().get(0));
          default -> true;
        };
    return shows && rerun.went(course);
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

  static long step(Program program, BigFraction seconds) {
    return seconds.divide(program.sequence().step()).longValue();
  }

  private static boolean areOn(Program program, EventCourse course, Place place) {
    Recorder recorder = new Recorder(program);
    for (Entry entry : course.entries()) {
      entry.event().ifPresent(event -> recorder.happen(step(program, entry.seconds()), event));
    }
    Timeline timeline = recorder.upTo(step(program, course.end()));
    Apart apart =
        program.sequence().apart().stream()
            .filter(one -> one.place().equals(place))
            .findFirst()
            .orElseThrow();
    return apart.outputs().stream().filter(timeline.onAtEnd()::contains).count() > 1;
  }
}
