package io.faultwright.operation;

import io.faultwright.model.Sequence.Course;
import io.faultwright.model.Sequence.Event;
import io.faultwright.model.Sequence.Happening;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/** Runs a course of events that answers what the machine does. */
public final class Courses {
  private record Due(long step, int order, int visit, Event event) {}

  private final Program program;
  private final List<Happening> happenings;
  private final PriorityQueue<Due> due =
      new PriorityQueue<>(Comparator.comparingLong(Due::step).thenComparingInt(Due::order));
  private final Recorder recorder;
  private int visit;
  private int order;

  private Courses(Program program, Course course) {
    this.program = program;
    this.happenings = course.happenings();
    for (Happening one : happenings) {
      if (one.phase().isEmpty()) {
        due.add(new Due(steps(one), order++, Line.NONE, one.event()));
      }
    }
    this.recorder = new Recorder(program, this::entered);
  }

  /** What the machine does in a course, for as long as the course is told. */
  public static Timeline follow(Program program, Course course) {
    long end = course.lasts().divide(program.sequence().step()).longValue();
    return new Courses(program.with(course.set()), course).upTo(end);
  }

  private void entered(long step, int phase, Reason reason) {
    visit++;
    String id = program.phase(phase).id();
    for (Happening one : happenings) {
      if (one.phase().filter(id::equals).isPresent()) {
        due.add(new Due(step + steps(one), order++, visit, one.event()));
      }
    }
  }

  private long steps(Happening one) {
    return one.seconds().divide(program.sequence().step()).longValue();
  }

  private Timeline upTo(long end) {
    long next = nextEvent();
    while (Math.min(next, nextChange()) <= end) {
      if (next <= nextChange()) {
        happen(due.poll());
      } else {
        recorder.machine().passTo(nextChange());
        settleUnlessEventsCome();
      }
      next = nextEvent();
    }
    return recorder.upTo(end);
  }

  private long nextEvent() {
    settleUnlessEventsCome();
    return due.isEmpty() ? Program.NEVER : due.peek().step();
  }

  private long nextChange() {
    return recorder.machine().isSettled() ? recorder.machine().nextChange() : Program.NEVER;
  }

  private void settleUnlessEventsCome() {
    Machine machine = recorder.machine();
    if (due.isEmpty() || due.peek().step() > machine.now()) {
      machine.settle();
    }
  }

  private void happen(Due next) {
    if (next.visit() == Line.NONE || next.visit() == visit) {
      recorder.happen(next.step(), next.event());
    }
  }
}
