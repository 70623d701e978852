package io.faultwright.finding;

import io.faultwright.model.Sequence.Event;
import io.faultwright.model.Sorted;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A course of events that shows something of a sequence of operation.
 *
 * @param sequence id of the sequence
 * @param set seconds to which times are set, by their ids; those as delivered are not listed
 * @param entries what happens and what follows, first to last
 * @param end seconds up to which it is told
 */
public record EventCourse(
    String sequence, SortedMap<String, BigFraction> set, List<Entry> entries, BigFraction end) {
  public EventCourse {
    set = Sorted.copy(set);
    entries = List.copyOf(entries);
  }

  /**
   * An event, or a phase that begins.
   *
   * @param seconds since the beginning
   * @param event what happens; absent where a phase begins
   * @param phase id of the phase that begins; absent where something happens
   */
  public record Entry(BigFraction seconds, Optional<Event> event, Optional<String> phase) {
    /** Something happens. */
    public static Entry of(BigFraction seconds, Event event) {
      return new Entry(seconds, Optional.of(event), Optional.empty());
    }

    /** A phase begins. */
    public static Entry of(BigFraction seconds, String phase) {
      return new Entry(seconds, Optional.empty(), Optional.of(phase));
    }
  }
}
