package io.faultwright.operation;

import io.faultwright.model.Sequence.Transition;
import io.faultwright.model.Sorted;
import io.faultwright.operation.Timeline.Stay;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What came of a sequence so far: how it stopped, what was shown, how long each phase took. It is
 * told of each phase as it begins, and keeps a few numbers for each phase and counter, however long
 * it goes on.
 */
public final class Outcomes implements Watcher {
  private static final long NOT_YET = -1;

  /**
   * What came of it.
   *
   * @param stop id of the stop that came last; absent where there was none
   * @param display what was shown last; absent where nothing was
   * @param lastStay seconds of the last stay that is over, by the id of the phase
   * @param counts of every counter as the last stop began, by id; without a stop, as they are now
   */
  public record Snapshot(
      Optional<String> stop,
      Optional<String> display,
      SortedMap<String, BigFraction> lastStay,
      SortedMap<String, Long> counts) {
    public Snapshot {
      lastStay = Sorted.copy(lastStay);
      counts = Sorted.copy(counts);
    }
  }

  private final Program program;
  private final long[] lastStay;
  private final long[] counts;
  private long[] countsAtStop;
  private int stop = Line.NONE;
  private int shown = Line.NONE;
  private int phase = Line.NONE;
  private long began;

  public Outcomes(Program program) {
    this.program = program;
    this.lastStay = new long[program.phaseCount()];
    this.counts = new long[program.counterCount()];
    this.countsAtStop = counts;
    Arrays.fill(lastStay, NOT_YET);
  }

  /** What came of a machine that was recorded. */
  public static Snapshot of(Timeline timeline) {
    Outcomes outcomes = new Outcomes(timeline.program());
    for (Stay stay : timeline.stays()) {
      outcomes.entered(stay.from(), timeline.program().phase(stay.phase()), stay.reason());
    }
    return outcomes.snapshot();
  }

  @Override
  public void entered(long step, int next, Reason reason) {
    if (phase != Line.NONE) {
      lastStay[phase] = step - began;
    }
    reason.line().ifPresent(this::count);
    phase = next;
    began = step;
    if (program.phase(next).display().isPresent()) {
      shown = next;
    }
    if (program.phase(next).stop()) {
      stop = next;
      countsAtStop = counts.clone();
    }
  }

  private void count(Transition line) {
    if (!line.reset().isEmpty()) {
      line.reset().forEach(id -> counts[program.counter(id)] = 0);
    }
    if (!line.count().isEmpty()) {
      line.count().forEach(id -> counts[program.counter(id)]++);
    }
  }

  /** What came of it so far. */
  public Snapshot snapshot() {
    SortedMap<String, BigFraction> stays = new TreeMap<>();
    for (int i = 0; i < lastStay.length; i++) {
      if (lastStay[i] != NOT_YET) {
        stays.put(program.phase(i).id(), seconds(lastStay[i]));
      }
    }
    SortedMap<String, Long> counted = new TreeMap<>();
    for (int i = 0; i < counts.length; i++) {
      counted.put(program.counter(i).id(), countsAtStop[i]);
    }
    return new Snapshot(
        Optional.of(stop).filter(one -> one != Line.NONE).map(one -> program.phase(one).id()),
        Optional.of(shown)
            .filter(one -> one != Line.NONE)
            .flatMap(one -> program.phase(one).display()),
        stays,
        counted);
  }

  private BigFraction seconds(long steps) {
    return program.sequence().step().multiply(BigInteger.valueOf(steps));
  }
}
