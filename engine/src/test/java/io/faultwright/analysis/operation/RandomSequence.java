package io.faultwright.analysis.operation;

import io.faultwright.model.Condition;
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
import io.faultwright.model.Sequence.Timer;
import io.faultwright.model.Sequence.Transition;
import io.faultwright.model.Sorted;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Small sequences made by chance: every kind of line, and times of a few seconds. */
final class RandomSequence {
  private static final int LONGEST = 4;

  private final Random random;
  private final int phases;
  private final List<Input> inputs = new ArrayList<>();
  private final List<Timer> timers = new ArrayList<>();
  private int line;

  private RandomSequence(long seed) {
    this.random = new Random(seed);
    this.phases = 2 + random.nextInt(3);
  }

  static Sequence of(long seed) {
    return new RandomSequence(seed).sequence();
  }

  private Place place() {
    return new Place("random.yaml", ++line, 1, 1);
  }

  private Sequence sequence() {
    inputs.add(switchOf("door"));
    if (random.nextBoolean()) {
      inputs.add(random.nextBoolean() ? switchOf("float") : push());
    }
    if (random.nextInt(3) > 0) {
      List<String> during =
          IntStream.range(0, phases).filter(i -> random.nextBoolean()).mapToObj(this::id).toList();
      timers.add(
          new Timer(
              "timer",
              place(),
              "Timer",
              lasting(),
              Sorted.set(during.isEmpty() ? List.of(id(0)) : during)));
    }
    Counter counter =
        new Counter(
            "count",
            place(),
            "Count",
            List.of(new Row(place(), Condition.ALWAYS, BigFraction.of(1 + random.nextInt(3)))),
            Optional.of(id(random.nextInt(phases))));
    return new Sequence(
        "random",
        place(),
        "Random",
        "",
        Condition.ALWAYS,
        BigFraction.ONE,
        List.of(new Output("fan", place(), "Fan"), new Output("valve", place(), "Valve")),
        inputs,
        List.of(),
        timers,
        List.of(counter),
        IntStream.range(0, phases).mapToObj(this::phase).toList(),
        id(0),
        List.of(new Apart(place(), Sorted.set(List.of("fan", "valve")), "")),
        List.of(),
        List.of());
  }

  private String id(int phase) {
    return "phase-" + phase;
  }

  private Input switchOf(String id) {
    List<NamedValue> states =
        List.of(new NamedValue("closed", "Closed"), new NamedValue("open", "Open"));
    return new Input(id, place(), id, states, Optional.of("closed"));
  }

  private Input push() {
    return new Input("button", place(), "Button", List.of(), Optional.empty());
  }

  private Lasting lasting() {
    BigFraction seconds = BigFraction.of(1 + random.nextInt(LONGEST));
    return new Lasting(place(), Optional.of(seconds), Optional.empty());
  }

  private Phase phase(int number) {
    List<Energised> on = new ArrayList<>();
    for (String output : List.of("fan", "valve")) {
      if (random.nextInt(3) == 0) {
        on.add(energised(output));
      }
    }
    List<Transition> next =
        IntStream.range(0, random.nextInt(4)).mapToObj(i -> transition(id(number))).toList();
    return new Phase(id(number), place(), id(number), "", Optional.empty(), false, false, on, next);
  }

  private Energised energised(String output) {
    return new Energised(output, place(), perhaps(lasting()), perhaps(lasting()), Condition.ALWAYS);
  }

  private <T> Optional<T> perhaps(T one) {
    return random.nextInt(3) == 0 ? Optional.of(one) : Optional.empty();
  }

  private Transition transition(String phase) {
    Optional<Event> event = random.nextInt(5) < 2 ? Optional.of(event()) : Optional.empty();
    List<InState> states = random.nextInt(5) < 2 ? List.of(state()) : List.of();
    boolean needs = event.isEmpty() && states.isEmpty();
    Optional<After> after = needs || random.nextInt(4) == 0 ? Optional.of(after(phase)) : none();
    return new Transition(
        place(),
        event,
        states,
        after,
        Condition.ALWAYS,
        id(random.nextInt(phases)),
        Sorted.set(random.nextInt(4) == 0 ? List.of("count") : List.of()),
        Sorted.set(random.nextInt(6) == 0 ? List.of("count") : List.of()),
        Sorted.set(random.nextInt(3) == 0 ? List.of(id(random.nextInt(phases))) : List.of()),
        "");
  }

  private static Optional<After> none() {
    return Optional.empty();
  }

  private After after(String phase) {
    boolean timer = timers.stream().anyMatch(one -> one.during().contains(phase));
    return timer && random.nextBoolean()
        ? new After(Optional.empty(), Optional.of("timer"))
        : new After(Optional.of(lasting()), Optional.empty());
  }

  private Event event() {
    Input input = inputs.get(random.nextInt(inputs.size()));
    return new Event(
        input.id(),
        input.isPush() ? Optional.empty() : Optional.of(random.nextBoolean() ? "open" : "closed"));
  }

  private InState state() {
    List<Input> switches = inputs.stream().filter(input -> !input.isPush()).toList();
    Input input = switches.get(random.nextInt(switches.size()));
    return new InState(input.id(), random.nextBoolean() ? "open" : "closed");
  }
}
