package io.faultwright.analysis.operation;

import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.After;
import io.faultwright.model.Sequence.Counter;
import io.faultwright.model.Sequence.Energised;
import io.faultwright.model.Sequence.Event;
import io.faultwright.model.Sequence.Input;
import io.faultwright.model.Sequence.Lasting;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Timer;
import io.faultwright.model.Sequence.Transition;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Another reading of what a sequence means, of steps of one second and one state at a time, which
 * shares no code with the machine or the proof: it works on names and on sums of seconds.
 */
final class SecondBySecond {
  /** Clocks beyond this are all alike: longer than every time in a random sequence. */
  private static final int OLD = 9;

  private static final int AT_ONCE = 300;

  /**
   * Where it is, within a second.
   *
   * @param phase id of the phase
   * @param inputs states by input
   * @param counts by counter
   * @param ages seconds for which the phase, and each timer that runs, has run
   */
  record State(
      String phase,
      Map<String, String> inputs,
      Map<String, Integer> counts,
      Map<String, Integer> ages) {}

  /** Two lines that could be taken at once. */
  record Pair(Transition one, Transition other) {}

  private final Sequence sequence;
  final Map<String, Integer> fewestEvents = new TreeMap<>();
  final Set<Transition> taken = new HashSet<>();
  final Set<Pair> undecided = new HashSet<>();
  final Set<String> together = new TreeSet<>();
  boolean restless;

  SecondBySecond(Sequence sequence) {
    this.sequence = sequence;
  }

  State start() {
    Map<String, String> inputs = new TreeMap<>();
    sequence.inputs().forEach(one -> one.atStart().ifPresent(state -> inputs.put(one.id(), state)));
    Map<String, Integer> counts = new TreeMap<>();
    sequence.counters().forEach(one -> counts.put(one.id(), 0));
    Map<String, Integer> ages = new TreeMap<>();
    ages.put("", 0);
    for (Timer timer : sequence.timers()) {
      if (timer.during().contains(sequence.start())) {
        ages.put(timer.id(), 0);
      }
    }
    return new State(sequence.start(), inputs, counts, ages);
  }

  /** The phase after the events of each second, for as many seconds as there are lists. */
  List<String> run(List<List<Event>> seconds) {
    List<String> phases = new ArrayList<>();
    State state = start();
    for (List<Event> events : seconds) {
      for (Event event : events) {
        state = happen(state, event);
      }
      Optional<State> rest = settle(state);
      if (rest.isEmpty()) {
        phases.add("restless");
        return phases;
      }
      phases.add(rest.get().phase());
      state = older(rest.get());
    }
    return phases;
  }

  private State happen(State state, Event event) {
    Map<String, String> inputs = new TreeMap<>(state.inputs());
    if (event.state().isPresent()) {
      String old = inputs.put(event.input(), event.state().get());
      if (event.state().get().equals(old)) {
        return state;
      }
    }
    State now = new State(state.phase(), inputs, state.counts(), state.ages());
    List<Transition> ready =
        sequence.phase(state.phase()).next().stream()
            .filter(one -> one.event().equals(Optional.of(event)) && holds(one, now))
            .toList();
    return ready.isEmpty() ? now : take(now, ready);
  }

  private Optional<State> settle(State state) {
    State now = state;
    for (int i = 0; i < AT_ONCE; i++) {
      State here = now;
      List<Transition> ready =
          sequence.phase(now.phase()).next().stream()
              .filter(one -> one.event().isEmpty() && holds(one, here))
              .toList();
      if (ready.isEmpty()) {
        return Optional.of(now);
      }
      now = take(now, ready);
    }
    restless = true;
    return Optional.empty();
  }

  private boolean holds(Transition one, State state) {
    boolean states =
        one.states().stream()
            .allMatch(test -> test.state().equals(state.inputs().get(test.input())));
    return states && one.after().map(after -> isOver(after, state)).orElse(true);
  }

  private boolean isOver(After after, State state) {
    if (after.lasting().isPresent()) {
      return state.ages().get("") >= seconds(after.lasting().get());
    }
    String timer = after.timer().orElseThrow();
    Lasting lasts =
        sequence.timers().stream()
            .filter(one -> one.id().equals(timer))
            .findFirst()
            .orElseThrow()
            .lasts();
    return state.ages().get(timer) >= seconds(lasts);
  }

  private static int seconds(Lasting lasting) {
    return lasting.seconds().orElseThrow().intValue();
  }

  private State take(State state, List<Transition> ready) {
    for (int i = 0; i < ready.size(); i++) {
      for (int j = i + 1; j < ready.size(); j++) {
        Transition one = ready.get(i);
        Transition other = ready.get(j);
        boolean same =
            one.go().equals(other.go())
                && one.count().equals(other.count())
                && one.reset().equals(other.reset());
        boolean first = one.aheadOf().contains(other.go());
        boolean second = other.aheadOf().contains(one.go());
        if (!same && first == second) {
          undecided.add(new Pair(one, other));
        }
      }
    }
    Transition chosen = ready.get(0);
    for (int i = ready.size() - 1; i >= 0; i--) {
      Transition one = ready.get(i);
      boolean silenced =
          ready.stream().anyMatch(other -> other != one && other.aheadOf().contains(one.go()));
      chosen = silenced ? chosen : one;
    }
    boolean allSilenced =
        ready.stream()
            .allMatch(
                one ->
                    ready.stream()
                        .anyMatch(other -> other != one && other.aheadOf().contains(one.go())));
    return take(state, allSilenced ? ready.get(0) : chosen);
  }

  private State take(State state, Transition line) {
    taken.add(line);
    Map<String, Integer> counts = new TreeMap<>(state.counts());
    line.reset().forEach(id -> counts.put(id, 0));
    String go = line.go();
    for (Counter counter : sequence.counters()) {
      if (line.count().contains(counter.id())) {
        int limit = counter.limit().get(0).value().intValue();
        int count = Math.min(limit, counts.get(counter.id()) + 1);
        counts.put(counter.id(), count);
        go = count >= limit ? counter.go().orElseThrow() : go;
      }
    }
    Map<String, Integer> ages = new TreeMap<>();
    ages.put("", 0);
    for (Timer timer : sequence.timers()) {
      if (timer.during().contains(go)) {
        boolean runsOn = timer.during().contains(state.phase());
        ages.put(timer.id(), runsOn ? state.ages().get(timer.id()) : 0);
      }
    }
    return new State(go, state.inputs(), counts, ages);
  }

  private static State older(State state) {
    Map<String, Integer> ages = new TreeMap<>();
    state.ages().forEach((id, age) -> ages.put(id, Math.min(OLD, age + 1)));
    return new State(state.phase(), state.inputs(), state.counts(), ages);
  }

  /** Every state there is, those with fewer events first. */
  void explore() {
    Map<State, Integer> known = new HashMap<>();
    Deque<State> open = new ArrayDeque<>();
    Deque<Integer> costs = new ArrayDeque<>();
    open.add(start());
    costs.add(0);
    fewestEvents.put(sequence.start(), 0);
    while (!open.isEmpty()) {
      State state = open.pollFirst();
      int cost = costs.pollFirst();
      if (known.putIfAbsent(state, cost) != null) {
        continue;
      }
      see(state.phase(), cost);
      for (Event event : events()) {
        State next = happen(state, event);
        see(next.phase(), cost + 1);
        open.addLast(next);
        costs.addLast(cost + 1);
      }
      Optional<State> rest = settleSeen(state, cost);
      if (rest.isPresent()) {
        seeOutputs(rest.get());
        open.addFirst(older(rest.get()));
        costs.addFirst(cost);
      }
    }
  }

  private void see(String phase, int cost) {
    fewestEvents.merge(phase, cost, Math::min);
  }

  /** As {@code settle}; phases that are over at once are seen too. */
  private Optional<State> settleSeen(State state, int cost) {
    State now = state;
    for (int i = 0; i < AT_ONCE; i++) {
      State here = now;
      List<Transition> ready =
          sequence.phase(now.phase()).next().stream()
              .filter(one -> one.event().isEmpty() && holds(one, here))
              .toList();
      if (ready.isEmpty()) {
        return Optional.of(now);
      }
      now = take(now, ready);
      see(now.phase(), cost);
    }
    restless = true;
    return Optional.empty();
  }

  private List<Event> events() {
    List<Event> events = new ArrayList<>();
    for (Input input : sequence.inputs()) {
      if (input.isPush()) {
        events.add(new Event(input.id(), Optional.empty()));
      }
      input.states().forEach(one -> events.add(new Event(input.id(), Optional.of(one.id()))));
    }
    return events;
  }

  private void seeOutputs(State state) {
    Phase phase = sequence.phase(state.phase());
    int age = state.ages().get("");
    Set<String> on = new TreeSet<>();
    for (Energised one : phase.on()) {
      boolean begun = one.from().map(from -> age >= seconds(from)).orElse(true);
      boolean over = one.until().map(until -> age >= seconds(until)).orElse(false);
      if (begun && !over) {
        on.add(one.output());
      }
    }
    if (on.size() > 1) {
      together.add(phase.id());
    }
  }
}
