package io.faultwright.operation;

import io.faultwright.model.Sequence.Event;
import io.faultwright.operation.Timeline.Happened;
import io.faultwright.operation.Timeline.Stay;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Runs a machine and keeps what it does. */
public final class Recorder {
  private record Entry(long step, int phase, Reason reason) {}

  private final Program program;
  private final Watcher further;
  private final List<Entry> entries = new ArrayList<>();
  private final List<Happened> events = new ArrayList<>();
  private final Machine machine;

  public Recorder(Program program) {
    this(program, (step, phase, reason) -> {});
  }

  /**
   * @param further is told of every phase too
   */
  Recorder(Program program, Watcher further) {
    this.program = program;
    this.further = further;
    this.machine = new Machine(program, this::entered);
  }

  private void entered(long step, int phase, Reason reason) {
    entries.add(new Entry(step, phase, reason));
    further.entered(step, phase, reason);
  }

  /** The machine at work. */
  public Machine machine() {
    return machine;
  }

  /** Something happens, at a step that is not over. */
  public void happen(long step, Event event) {
    int input = program.input(event.input());
    machine.happen(
        step, input, event.state().map(state -> program.state(input, state)).orElse(Line.NONE));
    events.add(new Happened(step, event));
  }

  /** What it did up to a step, that step included. */
  public Timeline upTo(long end) {
    if (!(machine.now() == end && machine.isSettled())) {
      machine.passTo(end);
    }
    machine.settle();
    List<Stay> stays = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      Entry entry = entries.get(i);
      boolean over = i + 1 < entries.size();
      long to = over ? entries.get(i + 1).step() : end;
      stays.add(
          new Stay(program.phase(entry.phase()).id(), entry.step(), to, over, entry.reason()));
    }
    return new Timeline(program, stays, events, end, counts());
  }

  private SortedMap<String, Long> counts() {
    SortedMap<String, Long> counts = new TreeMap<>();
    for (int i = 0; i < program.counterCount(); i++) {
      counts.put(program.counter(i).id(), machine.count(i));
    }
    return counts;
  }
}
