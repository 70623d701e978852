package io.faultwright.analysis.operation;

import io.faultwright.model.Build;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Equipment;
import io.faultwright.model.Model;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.After;
import io.faultwright.model.Sequence.Apart;
import io.faultwright.model.Sequence.Counter;
import io.faultwright.model.Sequence.Energised;
import io.faultwright.model.Sequence.Event;
import io.faultwright.model.Sequence.InState;
import io.faultwright.model.Sequence.Input;
import io.faultwright.model.Sequence.Lasting;
import io.faultwright.model.Sequence.Output;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Row;
import io.faultwright.model.Sequence.Stretch;
import io.faultwright.model.Sequence.Time;
import io.faultwright.model.Sequence.Timer;
import io.faultwright.model.Sequence.Transition;
import io.faultwright.model.Sorted;
import io.faultwright.model.Version;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Small sequences made by chance: every kind of line, times of a few steps by build and by setting,
 * timers through several phases, counters with and without a limit.
 */
final class RandomSequence {
  /** The longest time, in steps. */
  static final int LONGEST = 3;

  private static final List<String> VERSIONS = List.of("2.9", "2.10", "3.0");

  private final Random random;
  private final int phases;
  private final BigFraction step;
  private final List<String> versions;
  private final List<Input> inputs = new ArrayList<>();
  private final List<Time> times = new ArrayList<>();
  private final List<Timer> timers = new ArrayList<>();
  private final List<Counter> counters = new ArrayList<>();
  private int line;

  private RandomSequence(long seed) {
    this.random = new Random(seed);
    this.phases = 2 + random.nextInt(3);
    this.step = BigFraction.of(1, 1 + random.nextInt(2));
    this.versions = VERSIONS.subList(0, 1 + random.nextInt(3));
  }

  /** A sequence and the builds that run it. */
  record Made(Sequence sequence, List<Build> builds) {}

  static Made of(long seed) {
    RandomSequence made = new RandomSequence(seed);
    return new Made(made.sequence(), made.versions.stream().map(RandomSequence::build).toList());
  }

  private static Build build(String version) {
    Place place = new Place("random.yaml", 1, 1, 1);
    return new Build(
        new Model(
            "M", place, "M", "m", new TreeMap<>(), List.of(), Optional.empty(), new TreeMap<>()),
        Optional.of(new Version(version)));
  }

  private Place place() {
    return new Place("random.yaml", ++line, 1, 1);
  }

  private boolean once(int in) {
    return random.nextInt(in) == 0;
  }

  private Sequence sequence() {
    inputs.add(input("door", "closed", "open"));
    if (random.nextBoolean()) {
      inputs.add(random.nextBoolean() ? input("float", "low", "middle", "high") : push());
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      times.add(time("time-" + i));
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      timers.add(timer("timer-" + i));
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      counters.add(counter("count-" + i));
    }
    return new Sequence(
        "random",
        place(),
        "Random",
        "",
        Condition.ALWAYS,
        step,
        List.of(
            new Output("fan", place(), "Fan"),
            new Output("pump", place(), "Pump"),
            new Output("valve", place(), "Valve")),
        inputs,
        times,
        timers,
        counters,
        IntStream.range(0, phases).mapToObj(this::phase).toList(),
        id(0),
        List.of(
            new Apart(place(), Sorted.set(List.of("fan", "valve")), ""),
            new Apart(place(), Sorted.set(List.of("fan", "pump", "valve")), "")),
        List.of(),
        List.of());
  }

  private String id(int phase) {
    return "phase-" + phase;
  }

  private Input input(String id, String... states) {
    List<NamedValue> named = List.of(states).stream().map(one -> new NamedValue(one, one)).toList();
    return new Input(id, place(), id, named, Optional.of(states[random.nextInt(states.length)]));
  }

  private Input push() {
    return new Input("button", place(), "Button", List.of(), Optional.empty());
  }

  private Time time(String id) {
    Optional<Stretch> setting =
        once(3)
            ? Optional.of(new Stretch(step, step.multiply(1 + random.nextInt(LONGEST))))
            : Optional.empty();
    return new Time(id, place(), id, rows(LONGEST, step), setting, Optional.empty());
  }

  /** One value for all, or values by software that may leave a version out or tell two. */
  private List<Row> rows(int most, BigFraction unit) {
    if (random.nextBoolean()) {
      return List.of(row(Condition.ALWAYS, most, unit));
    }
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      rows.add(row(some(), most, unit));
    }
    return rows;
  }

  private Row row(Condition applies, int most, BigFraction unit) {
    return new Row(place(), applies, unit.multiply(1 + random.nextInt(most)));
  }

  private Condition some() {
    List<String> fitting = VERSIONS.stream().filter(version -> !once(3)).toList();
    return new Condition.Test(
        Equipment.SOFTWARE, new OneOf(new TreeSet<>(fitting)), new Place("random.yaml", 1, 1, 1));
  }

  private Condition applies() {
    return once(5) ? some() : Condition.ALWAYS;
  }

  private Timer timer(String id) {
    List<String> during =
        IntStream.range(0, phases).filter(i -> random.nextBoolean()).mapToObj(this::id).toList();
    return new Timer(
        id, place(), id, lasting(), Sorted.set(during.isEmpty() ? List.of(id(0)) : during));
  }

  private Counter counter(String id) {
    return once(4)
        ? new Counter(id, place(), id, List.of(), Optional.empty())
        : new Counter(
            id, place(), id, rows(3, BigFraction.ONE), Optional.of(id(random.nextInt(phases))));
  }

  private Lasting lasting() {
    if (!times.isEmpty() && random.nextBoolean()) {
      String time = times.get(random.nextInt(times.size())).id();
      return new Lasting(place(), Optional.empty(), Optional.of(time));
    }
    BigFraction seconds = step.multiply(1 + random.nextInt(LONGEST));
    return new Lasting(place(), Optional.of(seconds), Optional.empty());
  }

  private Phase phase(int number) {
    List<Energised> on = new ArrayList<>();
    for (String output : List.of("fan", "valve", "pump", "fan")) {
      if (once(4)) {
        on.add(new Energised(output, place(), perhaps(lasting()), perhaps(lasting()), applies()));
      }
    }
    List<Transition> next =
        IntStream.range(0, random.nextInt(5)).mapToObj(i -> transition(id(number))).toList();
    return new Phase(
        id(number), place(), id(number), "", Optional.empty(), once(4), once(8), on, next);
  }

  private <T> Optional<T> perhaps(T one) {
    return once(3) ? Optional.of(one) : Optional.empty();
  }

  private Transition transition(String phase) {
    Optional<Event> event = random.nextInt(5) < 2 ? Optional.of(event()) : Optional.empty();
    List<InState> states =
        IntStream.range(0, once(6) ? 2 : random.nextInt(2)).mapToObj(i -> state()).toList();
    boolean needs = event.isEmpty() && states.isEmpty();
    Optional<After> after = needs || once(4) ? Optional.of(after(phase)) : Optional.empty();
    return new Transition(
        place(),
        event,
        states,
        after,
        applies(),
        id(random.nextInt(phases)),
        Sorted.set(counters.stream().filter(one -> once(4)).map(Counter::id).toList()),
        Sorted.set(counters.stream().filter(one -> once(8)).map(Counter::id).toList()),
        Sorted.set(IntStream.range(0, phases).filter(i -> once(6)).mapToObj(this::id).toList()),
        "");
  }

  private After after(String phase) {
    List<Timer> running = timers.stream().filter(one -> one.during().contains(phase)).toList();
    return !running.isEmpty() && random.nextBoolean()
        ? new After(Optional.empty(), Optional.of(running.get(random.nextInt(running.size())).id()))
        : new After(Optional.of(lasting()), Optional.empty());
  }

  private Event event() {
    Input input = inputs.get(random.nextInt(inputs.size()));
    return new Event(input.id(), input.isPush() ? Optional.empty() : Optional.of(any(input)));
  }

  private String any(Input input) {
    return input.states().get(random.nextInt(input.states().size())).id();
  }

  private InState state() {
    List<Input> switches = inputs.stream().filter(input -> !input.isPush()).toList();
    Input input = switches.get(random.nextInt(switches.size()));
    return new InState(input.id(), any(input));
  }
}
