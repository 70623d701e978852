package io.faultwright.operation;

import io.faultwright.model.Sequence;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a machine did, from step 0 to an end.
 *
 * @param program that was run
 * @param stays one for each phase it was in, first to last; phases that were over at once too
 * @param events what happened, first to last
 * @param end step up to which it was followed
 * @param counts of every counter at the end, by id
 */
public record Timeline(
    Program program,
    List<Stay> stays,
    List<Happened> events,
    long end,
    SortedMap<String, Long> counts) {
  public Timeline {
    stays = List.copyOf(stays);
    events = List.copyOf(events);
    counts = new TreeMap<>(counts);
  }

  /**
   * A stay in a phase.
   *
   * @param phase id of the phase
   * @param from step at which it began
   * @param to step at which the next began, or up to which it was followed
   * @param over whether it was over by then
   * @param reason why it began
   */
  public record Stay(String phase, long from, long to, boolean over, Reason reason) {
    /** How many steps it took. */
    public long steps() {
      return to - from;
    }
  }

  /**
   * An event.
   *
   * @param step at which it came
   * @param event what came
   */
  public record Happened(long step, Sequence.Event event) {}

  /** Steps in seconds. */
  public BigFraction seconds(long steps) {
    return program.sequence().step().multiply(BigInteger.valueOf(steps));
  }

  /** The stop in which the machine stands last; absent where it has not stopped. */
  public Optional<Stay> stop() {
    Optional<Stay> last = Optional.empty();
    for (Stay stay : stays) {
      if (program.sequence().phase(stay.phase()).stop()) {
        last = Optional.of(stay);
      }
    }
    return last;
  }

  /** The last stay in a phase that is over; absent where there is none. */
  public Optional<Stay> last(String phase) {
    return stays.stream()
        .filter(stay -> stay.over() && stay.phase().equals(phase))
        .reduce((first, second) -> second);
  }

  /** When an output is on, as stretches of steps, first to last; those that meet are one. */
  public List<On> on(String output) {
    return Outputs.on(this, output);
  }

  /** Ids of the outputs that are on at the end. */
  public SortedSet<String> onAtEnd() {
    return Outputs.onAtEnd(this);
  }

  /**
   * An output is on.
   *
   * @param from first step
   * @param to first step at which it is off again, or the end
   */
  public record On(long from, long to) {}
}
