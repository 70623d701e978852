package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A sequence of operation: what a controller does, phase by phase. Everything stands in the order
 * in which it is written, which is the order in which it is printed.
 *
 * @param id identifier
 * @param place where it stands
 * @param title as printed
 * @param about what it is about; may be empty
 * @param applies equipment that works so
 * @param step seconds from one look of the controller to the next; every time is a multiple of it
 * @param outputs what the controller switches on and off
 * @param inputs what it sees
 * @param times how long something lasts, by equipment
 * @param timers what runs through several phases
 * @param counters what it counts
 * @param phases the phases; never empty
 * @param start id of the phase in which it begins
 * @param apart outputs that must not be on together
 * @param outcomes readings that tell what came of it
 * @param courses what happens round the controller, in good order or with a fault
 */
public record Sequence(
    String id,
    Place place,
    String title,
    String about,
    Condition applies,
    BigFraction step,
    List<Output> outputs,
    List<Input> inputs,
    List<Time> times,
    List<Timer> timers,
    List<Counter> counters,
    List<Phase> phases,
    String start,
    List<Apart> apart,
    List<Outcome> outcomes,
    List<Course> courses) {
  public Sequence {
    outputs = List.copyOf(outputs);
    inputs = List.copyOf(inputs);
    times = List.copyOf(times);
    timers = List.copyOf(timers);
    counters = List.copyOf(counters);
    phases = List.copyOf(phases);
    apart = List.copyOf(apart);
    outcomes = List.copyOf(outcomes);
    courses = List.copyOf(courses);
  }

  /** With some of its courses alone, in that order. */
  public Sequence showing(List<String> some) {
    List<Course> shown =
        some.stream()
            .flatMap(id -> courses.stream().filter(course -> course.id().equals(id)))
            .toList();
    return new Sequence(
        id, place, title, about, applies, step, outputs, inputs, times, timers, counters, phases,
        start, apart, outcomes, shown);
  }

  /** Everything it says of the equipment, its own and that of its parts. */
  public List<Condition> conditions() {
    Stream<Row> rows =
        Stream.concat(
            times.stream().flatMap(time -> time.rows.stream()),
            counters.stream().flatMap(counter -> counter.limit.stream()));
    Stream<Condition> ofPhases =
        phases.stream()
            .flatMap(
                phase ->
                    Stream.concat(
                        phase.on.stream().map(Energised::applies),
                        phase.next.stream().map(Transition::applies)));
    return Stream.of(
            Stream.of(applies),
            rows.map(Row::applies),
            ofPhases,
            courses.stream().map(Course::applies))
        .flatMap(all -> all)
        .toList();
  }

  /** A phase by its id. */
  public Phase phase(String phaseId) {
    return phases.stream().filter(one -> one.id.equals(phaseId)).findFirst().orElseThrow();
  }

  /** An input by its id. */
  public Input input(String inputId) {
    return inputs.stream().filter(one -> one.id.equals(inputId)).findFirst().orElseThrow();
  }

  /** A time by its id. */
  public Time time(String timeId) {
    return times.stream().filter(one -> one.id.equals(timeId)).findFirst().orElseThrow();
  }

  /** An output by its id. */
  public Output output(String outputId) {
    return outputs.stream().filter(one -> one.id.equals(outputId)).findFirst().orElseThrow();
  }

  /** A counter by its id. */
  public Counter counter(String counterId) {
    return counters.stream().filter(one -> one.id.equals(counterId)).findFirst().orElseThrow();
  }

  /**
   * Something that the controller energises.
   *
   * @param id identifier
   * @param place where it stands
   * @param title as printed
   */
  public record Output(String id, Place place, String title) {}

  /**
   * A switch, a call or a button.
   *
   * @param id identifier
   * @param place where it stands
   * @param title as printed
   * @param states in which it can be; none where it is a push that is over at once
   * @param atStart state as the sequence begins; absent for a push
   */
  public record Input(
      String id, Place place, String title, List<NamedValue> states, Optional<String> atStart) {
    public Input {
      states = List.copyOf(states);
    }

    /** Whether it is a push that is over at once. */
    public boolean isPush() {
      return states.isEmpty();
    }
  }

  /**
   * How long something lasts.
   *
   * @param id identifier
   * @param place where it stands
   * @param title as printed
   * @param rows its value by equipment, in seconds
   * @param setting stretch within which it can be set on the controller, in seconds
   * @param reading id of the reading that tells how it is set
   */
  public record Time(
      String id,
      Place place,
      String title,
      List<Row> rows,
      Optional<Stretch> setting,
      Optional<String> reading) {
    public Time {
      rows = List.copyOf(rows);
    }
  }

  /**
   * A value for some equipment.
   *
   * @param place where it stands
   * @param applies the equipment
   * @param value seconds, or how many
   */
  public record Row(Place place, Condition applies, BigFraction value) {}

  /** From one number of seconds to another, both included. */
  public record Stretch(BigFraction low, BigFraction high) {}

  /**
   * How long, as it is written in a phase.
   *
   * @param place where it stands
   * @param seconds written as a number; absent where a time is named
   * @param time id of the time; absent where a number is written
   */
  public record Lasting(Place place, Optional<BigFraction> seconds, Optional<String> time) {}

  /**
   * A timer that runs on through several phases. It begins as the machine comes into one of them
   * from another phase.
   *
   * @param id identifier
   * @param place where it stands
   * @param title as printed
   * @param lasts after which it has run out
   * @param during ids of the phases
   */
  public record Timer(
      String id, Place place, String title, Lasting lasts, SortedSet<String> during) {
    public Timer {
      during = Sorted.set(during);
    }
  }

  /**
   * How often something came in a row.
   *
   * @param id identifier
   * @param place where it stands
   * @param title as printed
   * @param limit how often it may come, by equipment; none where it is only counted
   * @param go id of the phase that follows once the limit is reached; absent without a limit
   */
  public record Counter(
      String id, Place place, String title, List<Row> limit, Optional<String> go) {
    public Counter {
      limit = List.copyOf(limit);
    }
  }

  /**
   * A phase.
   *
   * @param id identifier
   * @param place where it stands
   * @param title as printed
   * @param about what happens in it; may be empty
   * @param display what the display shows; absent where nothing special
   * @param stop whether the machine has stopped with an alarm
   * @param last whether it is meant that nothing leads on
   * @param on what is energised
   * @param next what leads on, and where to
   */
  public record Phase(
      String id,
      Place place,
      String title,
      String about,
      Optional<String> display,
      boolean stop,
      boolean last,
      List<Energised> on,
      List<Transition> next) {
    public Phase {
      on = List.copyOf(on);
      next = List.copyOf(next);
    }
  }

  /**
   * An output that is on in a phase, from and until a time after the phase began.
   *
   * @param output id of the output
   * @param place where it stands
   * @param from absent: from the beginning
   * @param until absent: to the end
   * @param applies equipment on which it is so
   */
  public record Energised(
      String output,
      Place place,
      Optional<Lasting> from,
      Optional<Lasting> until,
      Condition applies) {}

  /**
   * What leads from a phase to the next.
   *
   * @param place where it stands
   * @param event what has to happen; absent where a state or a time is enough
   * @param states in which inputs have to be
   * @param after what has to be over; absent where nothing
   * @param applies equipment on which it is so
   * @param go id of the next phase
   * @param count ids of the counters that go up by one
   * @param reset ids of the counters that begin again
   * @param aheadOf ids of next phases; this line goes ahead of those that lead there
   * @param because why; may be empty
   */
  public record Transition(
      Place place,
      Optional<Event> event,
      List<InState> states,
      Optional<After> after,
      Condition applies,
      String go,
      SortedSet<String> count,
      SortedSet<String> reset,
      SortedSet<String> aheadOf,
      String because) {
    public Transition {
      states = List.copyOf(states);
      count = Sorted.set(count);
      reset = Sorted.set(reset);
      aheadOf = Sorted.set(aheadOf);
    }
  }

  /**
   * Something that happens.
   *
   * @param input id of the input
   * @param state into which it comes; absent for a push
   */
  public record Event(String input, Optional<String> state) {}

  /** An input in one of its states. */
  public record InState(String input, String state) {}

  /**
   * What has to be over: a time since the phase began, or a timer.
   *
   * @param lasting the time since the phase began; absent for a timer
   * @param timer id of the timer; absent for a time
   */
  public record After(Optional<Lasting> lasting, Optional<String> timer) {}

  /**
   * Outputs of which no two may be on at once.
   *
   * @param place where it stands
   * @param outputs ids, at least two
   * @param because why
   */
  public record Apart(Place place, SortedSet<String> outputs, String because) {
    public Apart {
      outputs = Sorted.set(outputs);
    }
  }

  /** What a reading can tell of a sequence. */
  public enum Tells {
    /** The stop that came last: its phase, or none. */
    STOP,
    /** How long the last stay in a phase took. */
    TIME_IN,
    /** What a counter counted, up to the last stop. */
    COUNT_OF
  }

  /**
   * A reading that tells what came of a sequence.
   *
   * @param place where it stands
   * @param reading id of the reading
   * @param tells what it tells
   * @param of id of the phase or the counter; absent for a stop
   */
  public record Outcome(Place place, String reading, Tells tells, Optional<String> of) {}

  /**
   * What happens round the controller.
   *
   * @param id identifier
   * @param place where it stands
   * @param title as printed
   * @param fault id of the fault that shows so; absent in good order
   * @param applies equipment for which it is told
   * @param set seconds to which times are set, by their ids; others are as delivered
   * @param lasts for how many seconds it is followed
   * @param happenings what happens, and when
   */
  public record Course(
      String id,
      Place place,
      String title,
      Optional<String> fault,
      Condition applies,
      SortedMap<String, BigFraction> set,
      BigFraction lasts,
      List<Happening> happenings) {
    public Course {
      set = Sorted.copy(set);
      happenings = List.copyOf(happenings);
    }
  }

  /**
   * An event some time after a phase began, each time that it begins; or after the sequence began.
   *
   * @param place where it stands
   * @param phase id of the phase; absent: counted from the beginning of the sequence
   * @param seconds how long after it
   * @param event what happens; not if the phase is over before
   */
  public record Happening(Place place, Optional<String> phase, BigFraction seconds, Event event) {}
}
