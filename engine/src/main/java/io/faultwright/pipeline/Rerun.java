package io.faultwright.pipeline;

import io.faultwright.finding.EventCourse;
import io.faultwright.finding.EventCourse.Entry;
import io.faultwright.model.Sequence.Event;
import io.faultwright.operation.Line;
import io.faultwright.operation.Machine;
import io.faultwright.operation.Program;
import io.faultwright.operation.Reason;
import io.faultwright.operation.Restless;
import io.faultwright.operation.Watcher;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.List;

/** The machine along the course of events of a finding, with all that it saw at its end. */
final class Rerun implements Watcher {
  private record Entered(long step, String phase) {}

  private final Program program;
  private final long end;
  private final List<Entered> entered = new ArrayList<>();
  private final List<List<Place>> several = new ArrayList<>();
  private final List<Reason> reasons = new ArrayList<>();
  private boolean restless;

  private Rerun(Program program, EventCourse course) {
    this.program = program;
    this.end = SequenceReplay.step(program, course.end());
  }

  static Rerun of(Program program, EventCourse course) {
    Rerun rerun = new Rerun(program, course);
    Machine machine = new Machine(program, rerun);
    try {
      for (Entry entry : course.entries()) {
        long step = SequenceReplay.step(program, entry.seconds());
        entry.event().ifPresent(event -> happen(machine, step, event));
      }
      machine.passTo(rerun.end);
      machine.settle();
    } catch (Restless found) {
      rerun.restless = true;
    }
    return rerun;
  }

  private static void happen(Machine machine, long step, Event event) {
    Program program = machine.program();
    int input = program.input(event.input());
    int state = event.state().map(word -> program.state(input, word)).orElse(Line.NONE);
    machine.happen(step, input, state);
  }

  @Override
  public void entered(long step, int phase, Reason reason) {
    entered.add(new Entered(step, program.phase(phase).id()));
    if (step == end) {
      reasons.add(reason);
    }
  }

  @Override
  public void several(long step, List<Line> lines) {
    if (step == end) {
      several.add(lines.stream().map(line -> line.source().place()).toList());
    }
  }

  /** Whether the step at the end does not come to rest, or one before. */
  boolean isRestless() {
    return restless;
  }

  /** Whether lines at these places could be taken at once at the end. */
  boolean sawAtOnce(List<Place> places) {
    return several.stream().anyMatch(some -> some.containsAll(places));
  }

  /** Whether the line at a place brought a counter to its limit at the end. */
  boolean counted(Place place) {
    return reasons.stream()
        .filter(reason -> reason.counter().isPresent())
        .anyMatch(reason -> reason.line().filter(line -> line.place().equals(place)).isPresent());
  }

  /** Whether it went through the phases of the course, at the same steps. */
  boolean went(EventCourse course) {
    List<Entered> told =
        course.entries().stream()
            .filter(entry -> entry.phase().isPresent())
            .map(
                entry ->
                    new Entered(
                        SequenceReplay.step(program, entry.seconds()), entry.phase().orElseThrow()))
            .toList();
    return entered.size() >= told.size() && told.equals(entered.subList(0, told.size()));
  }
}
