package io.faultwright.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A controller at work. Time goes in whole steps. Within a step all events come first, in their
 * order; then everything that is due follows: what has run out, and what was only waiting for a
 * state. So an event at the very step at which a time runs out still counts.
 *
 * <p>Steps never go back. Memory does not grow with the number of events.
 */
public final class Machine {
  private static final int MOST_AT_ONCE = 10_000;

  private final Program program;
  private final Watcher watcher;
  private final long[] began;
  private final int[] inputs;
  private final long[] counts;
  private final Reason[][] reasons;
  private final List<Line> enabled = new ArrayList<>();
  private int phase;
  private long now;
  private boolean settled;

  /** A machine that begins at step 0. */
  public Machine(Program program, Watcher watcher) {
    this.program = program;
    this.watcher = watcher;
    this.began = new long[program.clockCount()];
    this.inputs = program.atStart();
    this.counts = new long[program.counterCount()];
    this.phase = program.start();
    this.reasons = new Reason[program.phaseCount()][];
    for (int i = 0; i < reasons.length; i++) {
      reasons[i] = new Reason[program.lines(i).length];
    }
    watcher.entered(0, phase, Reason.BEGINNING);
  }

  /**
   * Something happens.
   *
   * @param step at which it happens; not before the last
   * @param input number of the input
   * @param state into which it comes; {@link Line#NONE} for a push
   * @throws Restless where an earlier step does not end
   */
  public void happen(long step, int input, int state) {
    passTo(step);
    if (state != Line.NONE) {
      if (inputs[input] == state) {
        return;
      }
      inputs[input] = state;
    }
    enabled.clear();
    for (Line line : program.lines(phase)) {
      if (line.input() == input && line.state() == state && isReady(line)) {
        enabled.add(line);
      }
    }
    if (!enabled.isEmpty()) {
      take(chosen());
    }
  }

  /**
   * Time passes up to a step, which is still open for events.
   *
   * @throws Restless where an earlier step does not end
   */
  public void passTo(long step) {
    if (step < now || step == now && settled) {
      throw new IllegalArgumentException("step " + step + " is over, it is step " + now);
    }
    while (now < step) {
      settle();
      now = Math.min(step, nextChange());
      settled = false;
    }
  }

  /** Everything that is due at the present step follows; it is over then. */
  public void settle() {
    int taken = 0;
    while (!settled) {
      enabled.clear();
      for (Line line : program.lines(phase)) {
        if (!line.waits() && isReady(line)) {
          enabled.add(line);
        }
      }
      if (enabled.isEmpty()) {
        settled = true;
      } else if (++taken > MOST_AT_ONCE) {
        throw new Restless(now);
      } else {
        take(chosen());
      }
    }
  }

  private Line chosen() {
    if (enabled.size() == 1) {
      return enabled.get(0);
    }
    watcher.several(now, enabled);
    return program.chosen(enabled);
  }

  private boolean isReady(Line line) {
    boolean over = line.after() == 0 || now - began[line.clock()] >= line.after();
    return over && line.statesHold(inputs);
  }

  private void take(Line line) {
    int reached = program.count(line, counts);
    int next = program.next(line, reached);
    for (int clock = 0; clock < began.length; clock++) {
      if (program.begins(clock, phase, next)) {
        began[clock] = now;
      }
    }
    Reason reason = reached == Line.NONE ? reason(line) : counted(line, reached);
    phase = next;
    watcher.entered(now, next, reason);
  }

  private Reason reason(Line line) {
    Reason known = reasons[phase][line.number()];
    if (known == null) {
      known = new Reason(Optional.of(line.source()), Optional.empty());
      reasons[phase][line.number()] = known;
    }
    return known;
  }

  private Reason counted(Line line, int counter) {
    return new Reason(Optional.of(line.source()), Optional.of(program.counter(counter).id()));
  }

  /**
   * The next step at which something is due without an event; {@link Program#NEVER} where nothing
   * is. The present step has to be over.
   */
  public long nextChange() {
    long next = Program.NEVER;
    for (Line line : program.lines(phase)) {
      if (!line.waits() && line.after() != Program.NEVER && line.statesHold(inputs)) {
        next = Math.min(next, began[line.clock()] + line.after());
      }
    }
    return next;
  }

  /** What it runs. */
  public Program program() {
    return program;
  }

  /** The step it is. */
  public long now() {
    return now;
  }

  /** Whether the present step is over: the next event comes at a later one. */
  public boolean isSettled() {
    return settled;
  }

  /** The number of the phase it is in. */
  public int phase() {
    return phase;
  }

  /** The step at which the phase began. */
  public long phaseBegan() {
    return began[0];
  }

  /** How often a counter has counted since it began. */
  public long count(int counter) {
    return counts[counter];
  }

  /** The state of an input. */
  public int state(int input) {
    return inputs[input];
  }
}
