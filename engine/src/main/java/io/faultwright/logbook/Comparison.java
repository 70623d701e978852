package io.faultwright.logbook;

import io.faultwright.logbook.Stretches.Stretch;
import io.faultwright.operation.Program;
import io.faultwright.resolve.Told;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * Compares what was seen with what the model shows. What the log says to have changed has to change
 * so in the model too, as early or late as the clock may be wrong; what it says again, or for the
 * first time, the model has to show then. Where what was seen holds until the log says something
 * else, the model has to show it all the while. That is known only once the model is so far.
 */
final class Comparison {
  private static final int MOST = 10;

  /** Something that was seen, not compared yet. */
  private record Seen(Entry entry, boolean changed) {
    long step() {
      return entry.step();
    }

    int signal() {
      return entry.said().number();
    }
  }

  private final Signals signals;
  private final Stretches stretches;
  private final long within;
  private final boolean holds;
  private final Stays stays;
  private final Entry[] last;
  private final Entry[] held;
  private final boolean[] parted;
  private final Deque<Seen> pending = new ArrayDeque<>();
  private final List<Parting> partings = new ArrayList<>();
  private long heldUpTo = -1;
  private long all;
  private long seen;

  /**
   * @param holds whether what was seen holds until the log says something else
   */
  Comparison(Program program, long within, boolean holds, Stays stays) {
    this.signals = new Signals(program);
    this.stretches = new Stretches(program, signals);
    this.within = within;
    this.holds = holds;
    this.stays = stays;
    this.last = new Entry[signals.count()];
    this.held = new Entry[signals.count()];
    this.parted = new boolean[signals.count()];
  }

  /** Something was seen. */
  void see(Entry entry) {
    seen++;
    int signal = entry.said().number();
    Entry before = last[signal];
    boolean again = before != null && before.said().value() == entry.said().value();
    if (again && (holds || before.step() == entry.step())) {
      return;
    }
    last[signal] = entry;
    pending.add(new Seen(entry, before != null && !again));
  }

  /** Whether something waits for the model to come further. */
  boolean isWaiting() {
    return holds || !pending.isEmpty();
  }

  /**
   * Compares what can be, as every step before this one is over.
   *
   * @param end the last step of which the log tells
   */
  void upTo(long step, long end) {
    while (!pending.isEmpty() && pending.peek().step() + within < step) {
      Seen one = pending.poll();
      hold(one.step() - 1);
      compare(one);
      held[one.signal()] = one.entry();
    }
    long next = pending.isEmpty() ? Program.NEVER : pending.peek().step();
    hold(Math.min(end, Math.min(step - within, next) - 1));
    stays.forget(Math.min(Math.min(step, next), heldUpTo + 1) - within - 1);
  }

  /** What was seen before holds up to a step. */
  private void hold(long step) {
    if (step <= heldUpTo) {
      return;
    }
    for (int signal = 0; holds && signal < held.length; signal++) {
      if (held[signal] != null) {
        hold(signal, step);
      }
    }
    heldUpTo = step;
  }

  private void hold(int signal, long step) {
    long missing = firstMissing(signal, heldUpTo + 1, step);
    if (missing <= step) {
      if (!parted[signal]) {
        part(held[signal], missing, false);
      }
      parted[signal] = firstMissing(signal, step, step) <= step;
    } else {
      parted[signal] = false;
    }
  }

  /** The first step at which the model does not show what is held; beyond the last if it does. */
  private long firstMissing(int signal, long first, long end) {
    long at = first;
    for (Stretch stretch : stretches.of(signal, stays.all())) {
      if (fits(stretch, held[signal])
          && stretch.from() - within <= at
          && stretch.to() >= at - within) {
        at = stretch.to() >= end - within ? end + 1 : stretch.to() + within + 1;
      }
    }
    return at;
  }

  private static boolean fits(Stretch stretch, Entry entry) {
    return stretch.value() == entry.said().value() || stretch.value() == Signals.ANYTHING;
  }

  private void compare(Seen one) {
    boolean agrees = agrees(one);
    if (!agrees && !parted[one.signal()]) {
      part(one.entry(), one.step(), one.changed());
    }
    parted[one.signal()] = !agrees;
  }

  private boolean agrees(Seen one) {
    long first = one.step() - within;
    long end = one.step() + within;
    for (Stretch stretch : stretches.of(one.signal(), stays.all())) {
      boolean comes = one.changed() && stretch.value() != Signals.ANYTHING;
      boolean then =
          comes ? stretch.from() >= first && stretch.from() <= end : stretch.overlaps(first, end);
      if (then && fits(stretch, one.entry())) {
        return true;
      }
    }
    return false;
  }

  private void part(Entry entry, long step, boolean changed) {
    all++;
    int signal = entry.said().number();
    Stretch shown = new Stretch(0, 0, Signals.ANYTHING);
    for (Stretch stretch : stretches.of(signal, stays.all())) {
      shown = stretch.from() <= step ? stretch : shown;
    }
    Came came = stays.at(step).came();
    Told model = signals.told(signal, shown.value());
    partings.add(new Parting(entry, step, changed, model, shown.from(), came));
    partings.sort(Comparator.comparingLong(Parting::step));
    partings.subList(Math.min(MOST, partings.size()), partings.size()).clear();
  }

  long seen() {
    return seen;
  }

  /** Where they part. */
  Followed.Some<Parting> partings() {
    return new Followed.Some<>(partings, all);
  }
}
