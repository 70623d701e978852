package io.faultwright.analysis.operation;

import io.faultwright.model.Build;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.After;
import io.faultwright.model.Sequence.Apart;
import io.faultwright.model.Sequence.Counter;
import io.faultwright.model.Sequence.Energised;
import io.faultwright.model.Sequence.Event;
import io.faultwright.model.Sequence.Input;
import io.faultwright.model.Sequence.Lasting;
import io.faultwright.model.Sequence.Row;
import io.faultwright.model.Sequence.Timer;
import io.faultwright.model.Sequence.Transition;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Another reading of what a sequence means, step by step and one state at a time, which shares no
 * code with the machine or the proof: it works on names and on sums of steps.
 */
final class SecondBySecond {
  /** Clocks beyond this are all alike: longer than every time in a random sequence. */
  private static final int OLD = RandomSequence.LONGEST + 1;

  private static final int AT_ONCE = 300;

  /**
   * Where it is, within a step.
   *
   * @param phase id of the phase
   * @param inputs states by input
   * @param counts by counter with a limit
   * @param ages steps for which the phase, and each timer that runs, has run
   */
  record State(
      String phase,
      Map<String, String> inputs,
      Map<String, Integer> counts,
      Map<String, Integer> ages) {}

  /** How far away something is: first events count, then steps. */
  record Cost(int events, int steps) implements Comparable<Cost> {
    private static final Comparator<Cost> ORDER =
        Comparator.comparingInt(Cost::events).thenComparingInt(Cost::steps);

    @Override
    public int compareTo(Cost other) {
      return ORDER.compare(this, other);
    }
  }

  private record Open(Cost cost, State state) {}

  /** Two lines that could be taken at once. */
  record Pair(Transition one, Transition other) {}

  /** Two outputs that are on in a phase, of those that must not be. */
  record Both(Apart apart, Set<String> outputs, String phase) {}

  private final Sequence sequence;
  private final Build build;
  private final Map<String, BigFraction> set;
  final Map<String, Cost> phases = new TreeMap<>();
  final Map<Transition, Cost> taken = new HashMap<>();
  final Map<Pair, Cost> undecided = new HashMap<>();
  final Map<Transition, Cost> counted = new HashMap<>();
  final Map<Both, Cost> together = new HashMap<>();
  final Set<Lasting> over = new HashSet<>();
  final Set<String> left = new TreeSet<>();
  Optional<Cost> restless = Optional.empty();

  SecondBySecond(Sequence sequence, Build build, Map<String, BigFraction> set) {
    this.sequence = sequence;
    this.build = build;
    this.set = set;
  }

  State start() {
    Map<String, String> inputs = new TreeMap<>();
    sequence.inputs().forEach(one -> one.atStart().ifPresent(state -> inputs.put(one.id(), state)));
    Map<String, Integer> counts = new TreeMap<>();
    sequence.counters().stream()
        .filter(one -> limit(one).isPresent())
        .forEach(one -> counts.put(one.id(), 0));
    Map<String, Integer> ages = new TreeMap<>();
    ages.put("", 0);
    for (Timer timer : sequence.timers()) {
      if (timer.during().contains(sequence.start())) {
        ages.put(timer.id(), 0);
      }
    }
    return new State(sequence.start(), inputs, counts, ages);
  }

  /** The phase after the events of each step, for as many steps as there are lists. */
  List<String> run(List<List<Event>> steps) {
    List<String> run = new ArrayList<>();
    State state = start();
    for (List<Event> events : steps) {
      for (Event event : events) {
        state = happen(state, event, new Cost(0, 0));
      }
      Optional<State> rest = settle(state, new Cost(0, 0));
      if (rest.isEmpty()) {
        run.add("restless");
        return run;
      }
      run.add(rest.get().phase());
      state = older(rest.get());
    }
    return run;
  }

  private State happen(State state, Event event, Cost cost) {
    Map<String, String> inputs = new TreeMap<>(state.inputs());
    if (event.state().isPresent()) {
      String old = inputs.put(event.input(), event.state().get());
      if (event.state().get().equals(old)) {
        return state;
      }
    }
    State now = new State(state.phase(), inputs, state.counts(), state.ages());
    List<Transition> ready =
        lines(state.phase()).stream()
            .filter(one -> one.event().equals(Optional.of(event)) && holds(one, now))
            .toList();
    return ready.isEmpty() ? now : take(now, ready, cost);
  }

  /** The lines of a phase that the build has. */
  List<Transition> lines(String phase) {
    return sequence.phase(phase).next().stream()
        .filter(one -> build.satisfies(one.applies()))
        .toList();
  }

  /** The outputs of a phase that the build has. */
  List<Energised> on(String phase) {
    return sequence.phase(phase).on().stream()
        .filter(one -> build.satisfies(one.applies()))
        .toList();
  }

  private Optional<State> settle(State state, Cost cost) {
    State now = state;
    for (int i = 0; i < AT_ONCE; i++) {
      State here = now;
      List<Transition> ready =
          lines(now.phase()).stream()
              .filter(one -> one.event().isEmpty() && holds(one, here))
              .toList();
      seeUntil(now);
      if (ready.isEmpty()) {
        return Optional.of(now);
      }
      now = take(now, ready, cost);
    }
    restless = restless.filter(old -> old.compareTo(cost) <= 0).or(() -> Optional.of(cost));
    return Optional.empty();
  }

  private boolean holds(Transition one, State state) {
    boolean states =
        one.states().stream()
            .allMatch(test -> test.state().equals(state.inputs().get(test.input())));
    return states && one.after().map(after -> isOver(after, state)).orElse(true);
  }

  private boolean isOver(After after, State state) {
    Optional<Integer> steps = steps(lasting(after));
    int age = state.ages().get(after.timer().orElse(""));
    return steps.isPresent() && age >= steps.get();
  }

  Lasting lasting(After after) {
    return after
        .lasting()
        .orElseGet(
            () ->
                sequence.timers().stream()
                    .filter(one -> one.id().equals(after.timer().orElseThrow()))
                    .findFirst()
                    .orElseThrow()
                    .lasts());
  }

  /** Empty where the build has no value. */
  Optional<Integer> steps(Lasting lasting) {
    Optional<BigFraction> seconds = lasting.seconds();
    if (lasting.time().isPresent()) {
      String time = lasting.time().get();
      seconds =
          set.containsKey(time)
              ? Optional.of(set.get(time))
              : values(sequence.time(time).rows()).stream().findFirst();
    }
    return seconds.map(one -> one.divide(sequence.step()).intValue());
  }

  /** Values that the build has. */
  List<BigFraction> values(List<Row> rows) {
    return rows.stream().filter(this::has).map(Row::value).toList();
  }

  boolean has(Row row) {
    return build.satisfies(row.applies());
  }

  /** Whether every time is as delivered. */
  boolean isAsDelivered() {
    return set.isEmpty();
  }

  private Optional<Integer> limit(Counter counter) {
    return values(counter.limit()).stream().findFirst().map(BigFraction::intValue);
  }

  /**
   * Lines that others go ahead of are struck out round by round; what is left in a circle stays.
   */
  private static List<Transition> first(List<Transition> ready) {
    Set<Transition> first = new HashSet<>();
    for (Transition one : ready) {
      Set<Transition> before = before(one, ready);
      if (before.stream().allMatch(other -> before(other, ready).contains(one))) {
        first.add(one);
      }
    }
    return ready.stream().filter(first::contains).toList();
  }

  private static Set<Transition> before(Transition one, List<Transition> ready) {
    Set<Transition> before = new HashSet<>();
    boolean more = true;
    while (more) {
      more = false;
      for (Transition other : ready) {
        boolean direct = other != one && other.aheadOf().contains(one.go());
        boolean byOthers =
            before.stream().anyMatch(b -> b != other && other.aheadOf().contains(b.go()));
        more |= (direct || byOthers) && before.add(other);
      }
    }
    return before;
  }

  private State take(State state, List<Transition> ready, Cost cost) {
    List<Transition> first = first(ready);
    for (int i = 0; i < first.size(); i++) {
      for (int j = i + 1; j < first.size(); j++) {
        Transition one = first.get(i);
        Transition other = first.get(j);
        boolean same =
            one.go().equals(other.go())
                && one.count().equals(other.count())
                && one.reset().equals(other.reset());
        if (!same) {
          undecided.merge(new Pair(one, other), cost, SecondBySecond::less);
          List.of(one, other).forEach(line -> leave(state.phase(), line.go()));
        }
      }
    }
    return take(state, first.get(0), cost);
  }

  private static Cost less(Cost one, Cost other) {
    return one.compareTo(other) <= 0 ? one : other;
  }

  private void leave(String from, String to) {
    if (!from.equals(to)) {
      left.add(from);
    }
  }

  private State take(State state, Transition line, Cost cost) {
    Map<String, Integer> counts = new TreeMap<>(state.counts());
    counts.keySet().stream().filter(line.reset()::contains).forEach(id -> counts.put(id, 0));
    List<String> limits = new ArrayList<>();
    for (String id : line.count()) {
      Counter counter = sequence.counter(id);
      Optional<Integer> limit = limit(counter);
      if (limit.isPresent()) {
        counts.put(id, Math.min(limit.get(), counts.get(id) + 1));
        if (counts.get(id).equals(limit.get())) {
          limits.add(counter.go().orElseThrow());
        }
      }
    }
    String go = limits.isEmpty() ? line.go() : limits.get(0);
    Map<String, Integer> ages = new TreeMap<>();
    ages.put("", 0);
    for (Timer timer : sequence.timers()) {
      if (timer.during().contains(go)) {
        boolean runsOn = timer.during().contains(state.phase());
        ages.put(timer.id(), runsOn ? state.ages().get(timer.id()) : 0);
      }
    }
    taken.merge(line, cost, SecondBySecond::less);
    phases.merge(go, cost, SecondBySecond::less);
    if (new HashSet<>(limits).size() > 1) {
      counted.merge(line, cost, SecondBySecond::less);
    }
    leave(state.phase(), go);
    return new State(go, state.inputs(), counts, ages);
  }

  private static State older(State state) {
    Map<String, Integer> ages = new TreeMap<>();
    state.ages().forEach((id, age) -> ages.put(id, Math.min(OLD, age + 1)));
    return new State(state.phase(), state.inputs(), state.counts(), ages);
  }

  /** Every state there is, those with fewer events first, of these those at earlier steps. */
  void explore() {
    Set<State> known = new HashSet<>();
    PriorityQueue<Open> open = new PriorityQueue<>(Comparator.comparing(Open::cost));
    open.add(new Open(new Cost(0, 0), start()));
    phases.put(sequence.start(), new Cost(0, 0));
    while (!open.isEmpty()) {
      Open next = open.poll();
      if (!known.add(next.state())) {
        continue;
      }
      Cost cost = next.cost();
      Cost more = new Cost(cost.events() + 1, cost.steps());
      for (Event event : events()) {
        open.add(new Open(more, happen(next.state(), event, more)));
      }
      Optional<State> rest = settle(next.state(), cost);
      if (rest.isPresent()) {
        seeOutputs(rest.get(), cost);
        open.add(new Open(new Cost(cost.events(), cost.steps() + 1), older(rest.get())));
      }
    }
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

  private void seeUntil(State state) {
    for (Energised one : on(state.phase())) {
      one.until()
          .filter(until -> steps(until).filter(n -> state.ages().get("") >= n).isPresent())
          .ifPresent(over::add);
    }
  }

  private void seeOutputs(State state, Cost cost) {
    int age = state.ages().get("");
    Set<String> on = new TreeSet<>();
    for (Energised one : on(state.phase())) {
      Optional<Integer> from = one.from().isEmpty() ? Optional.of(0) : steps(one.from().get());
      Optional<Integer> until = one.until().flatMap(this::steps);
      boolean sometimes = from.isPresent() && (until.isEmpty() || from.get() < until.get());
      if (sometimes && age >= from.get()) {
        one.from().ifPresent(over::add);
      }
      if (sometimes && age >= from.get() && (until.isEmpty() || age < until.get())) {
        on.add(one.output());
      }
    }
    for (Apart apart : sequence.apart()) {
      for (String one : on) {
        for (String other : on) {
          if (one.compareTo(other) < 0 && apart.outputs().containsAll(List.of(one, other))) {
            Both both = new Both(apart, Set.of(one, other), state.phase());
            together.merge(both, cost, SecondBySecond::less);
          }
        }
      }
    }
  }
}
