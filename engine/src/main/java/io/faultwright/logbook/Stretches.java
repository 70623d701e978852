package io.faultwright.logbook;

import io.faultwright.operation.Lit;
import io.faultwright.operation.Program;
import java.util.ArrayList;
import java.util.List;

/** What the model shows of one signal, stretch by stretch, over the stays that are kept. */
final class Stretches {
  private final Program program;
  private final Signals signals;
  private final List<Stretch> all = new ArrayList<>();

  /**
   * The same for a while.
   *
   * @param from first step
   * @param to step at which it is over; that step included, as a log may tell either then
   */
  record Stretch(long from, long to, int value) {
    boolean overlaps(long first, long last) {
      return from <= last && to >= first;
    }
  }

  Stretches(Program program, Signals signals) {
    this.program = program;
    this.signals = signals;
  }

  /** The stretches of one signal, first to last; good until the next call. */
  List<Stretch> of(int signal, Iterable<Stays.Stay> stays) {
    all.clear();
    for (Stays.Stay stay : stays) {
      if (signals.isOutput(signal)) {
        output(signal, stay);
      } else {
        add(stay.from(), stay.to(), signals.value(signal, stay.phase()));
      }
    }
    return all;
  }

  /** Where it is on is said by several lines; between those it is off. */
  private void output(int output, Stays.Stay stay) {
    long at = stay.from();
    do {
      boolean on = isOn(output, stay, at);
      long next = Math.min(stay.to(), nextEdge(output, stay, at));
      add(at, next, Signals.onOff(on));
      at = next;
    } while (at < stay.to());
  }

  private boolean isOn(int output, Stays.Stay stay, long step) {
    long since = step - stay.from();
    for (Lit lit : program.lit(stay.phase())) {
      if (lit.output() == output && lit.from() <= since && since < lit.until()) {
        return true;
      }
    }
    return false;
  }

  private long nextEdge(int output, Stays.Stay stay, long step) {
    long since = step - stay.from();
    long next = Program.NEVER;
    for (Lit lit : program.lit(stay.phase())) {
      if (lit.output() == output && lit.from() > since) {
        next = Math.min(next, lit.from());
      }
      if (lit.output() == output && lit.until() > since) {
        next = Math.min(next, lit.until());
      }
    }
    return next == Program.NEVER ? Program.NEVER : stay.from() + next;
  }

  private void add(long from, long to, int value) {
    int last = all.size() - 1;
    if (last >= 0 && all.get(last).value() == value) {
      all.set(last, new Stretch(all.get(last).from(), to, value));
    } else {
      all.add(new Stretch(from, to, value));
    }
  }
}
