package io.faultwright.logbook;

import io.faultwright.logbook.Stretches.Stretch;
import io.faultwright.operation.Program;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * Compares what was seen with what the model shows. What the log says to have changed has to change
 * so in the model too, as early or late as the clock may be wrong; what it says again, or for the
 * first time, the model has to show then. That is known only once the model is so far.
 */
final class Comparison {
  private static final int MOST = 10;

  /** Something that was seen, not compared yet. */
  private record Seen(Entry entry, long step, boolean changed) {}

  private final Signals signals;
  private final Stretches stretches;
  private final long within;
  private final Stays stays;
  private final Entry[] last;
  private final boolean[] parted;
  private final Deque<Seen> pending = new ArrayDeque<>();
  private final List<Parting> partings = new ArrayList<>();
  private long all;
  private long seen;

  Comparison(Program program, long within, Stays stays) {
    this.signals = new Signals(program);
    this.stretches = new Stretches(program, signals);
    this.within = within;
    this.stays = stays;
    this.last = new Entry[signals.count()];
    this.parted = new boolean[signals.count()];
  }

  /** Something was seen. */
  void see(Entry entry) {
    seen++;
    int signal = entry.said().number();
    Entry before = last[signal];
    last[signal] = entry;
    boolean again = before != null && before.said().value() == entry.said().value();
    if (!again || before.step() != entry.step()) {
      pending.add(new Seen(entry, entry.step(), before != null && !again));
    }
  }

  /** What was seen last has lasted to the end. */
  void hold(long end) {
    Arrays.stream(last)
        .filter(entry -> entry != null && entry.step() < end)
        .forEach(entry -> pending.add(new Seen(entry, end, false)));
  }

  /** Whether something waits for the model to come further. */
  boolean isWaiting() {
    return !pending.isEmpty();
  }

  /** Compares what can be, as every step before this one is over. */
  void upTo(long step) {
    while (!pending.isEmpty() && pending.peek().step() + within < step) {
      compare(pending.poll());
    }
    long oldest = pending.isEmpty() ? step : Math.min(step, pending.peek().step());
    stays.forget(oldest - within - 1);
  }

  private void compare(Seen one) {
    int signal = one.entry().said().number();
    boolean agrees = agrees(one);
    if (!agrees && !parted[signal]) {
      all++;
      if (partings.size() < MOST) {
        partings.add(parting(one));
      }
    }
    parted[signal] = !agrees;
  }

  private boolean agrees(Seen one) {
    long first = one.step() - within;
    long end = one.step() + within;
    int value = one.entry().said().value();
    for (Stretch stretch : stretches.of(one.entry().said().number(), stays.all())) {
      boolean fits = stretch.value() == value || stretch.value() == Signals.ANYTHING;
      boolean then =
          one.changed() && stretch.value() != Signals.ANYTHING
              ? stretch.from() >= first && stretch.from() <= end
              : stretch.overlaps(first, end);
      if (fits && then) {
        return true;
      }
    }
    return false;
  }

  private Parting parting(Seen one) {
    int signal = one.entry().said().number();
    Stretch shown = new Stretch(0, 0, Signals.ANYTHING);
    for (Stretch stretch : stretches.of(signal, stays.all())) {
      shown = stretch.from() <= one.step() ? stretch : shown;
    }
    return new Parting(
        one.entry(),
        one.step(),
        one.changed(),
        signals.told(signal, shown.value()),
        shown.from(),
        stays.at(one.step()).came());
  }

  long seen() {
    return seen;
  }

  /** Where they part. */
  Followed.Some<Parting> partings() {
    return new Followed.Some<>(partings, all);
  }
}
