package io.faultwright.operation;

import io.faultwright.model.Build;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Counter;
import io.faultwright.model.Sequence.Energised;
import io.faultwright.model.Sequence.Event;
import io.faultwright.model.Sequence.Input;
import io.faultwright.model.Sequence.Lasting;
import io.faultwright.model.Sequence.Phase;
import io.faultwright.model.Sequence.Row;
import io.faultwright.model.Sequence.Time;
import io.faultwright.model.Sequence.Timer;
import io.faultwright.model.Sequence.Transition;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A sequence of operation as one build runs it. What has an id in the sequence has a number here,
 * its place in the written order. A time that the build lacks never comes.
 */
public final class Program {
  /** A number of steps that never pass. */
  public static final long NEVER = Long.MAX_VALUE;

  private final Sequence sequence;
  private final Build build;
  private final Map<String, BigFraction> set;
  private final List<String> phases;
  private final List<String> inputs;
  private final List<String> outputs;
  private final List<String> counters;
  private final List<String> timers;
  private final Line[][] lines;
  private final Lit[][] lit;
  private final boolean[][] runs;
  private final long[] limits;
  private final int[] limitGo;

  private Program(Sequence sequence, Build build, Map<String, BigFraction> set) {
    this.sequence = sequence;
    this.build = build;
    this.set = Map.copyOf(set);
    this.phases = sequence.phases().stream().map(Phase::id).toList();
    this.inputs = sequence.inputs().stream().map(Input::id).toList();
    this.outputs = sequence.outputs().stream().map(Sequence.Output::id).toList();
    this.counters = sequence.counters().stream().map(Counter::id).toList();
    this.timers = sequence.timers().stream().map(Timer::id).toList();
    this.lines = sequence.phases().stream().map(this::lines).toArray(Line[][]::new);
    this.lit = sequence.phases().stream().map(this::lit).toArray(Lit[][]::new);
    this.runs = sequence.timers().stream().map(this::runs).toArray(boolean[][]::new);
    this.limits = sequence.counters().stream().mapToLong(this::limit).toArray();
    this.limitGo =
        sequence.counters().stream()
            .mapToInt(one -> one.go().map(phases::indexOf).orElse(Line.NONE))
            .toArray();
  }

  /** The sequence as a build runs it, with the times as delivered. */
  public static Program of(Sequence sequence, Build build) {
    return new Program(sequence, build, Map.of());
  }

  /**
   * The sequence as a build runs it.
   *
   * @param set seconds to which times are set, by their ids
   */
  public static Program of(Sequence sequence, Build build, Map<String, BigFraction> set) {
    return new Program(sequence, build, set);
  }

  /**
   * The same with some times set otherwise.
   *
   * @param more seconds by the ids of the times
   */
  public Program with(Map<String, BigFraction> more) {
    if (more.isEmpty()) {
      return this;
    }
    Map<String, BigFraction> all = new HashMap<>(set);
    all.putAll(more);
    return new Program(sequence, build, all);
  }

  private Line[] lines(Phase phase) {
    List<Transition> written =
        phase.next().stream().filter(one -> build.satisfies(one.applies())).toList();
    return IntStream.range(0, written.size()).mapToObj(i -> line(written, i)).toArray(Line[]::new);
  }

  private Line line(List<Transition> phase, int number) {
    Transition one = phase.get(number);
    Optional<Event> event = one.event();
    int input = event.map(known -> inputs.indexOf(known.input())).orElse(Line.NONE);
    return new Line(
        one,
        number,
        input,
        event.flatMap(Event::state).map(state -> state(input, state)).orElse(Line.NONE),
        one.states().stream().mapToInt(state -> inputs.indexOf(state.input())).toArray(),
        one.states().stream()
            .mapToInt(state -> state(inputs.indexOf(state.input()), state.state()))
            .toArray(),
        one.after().flatMap(Sequence.After::timer).map(id -> timers.indexOf(id) + 1).orElse(0),
        one.after().map(this::steps).orElse(0L),
        phases.indexOf(one.go()),
        one.count().stream().mapToInt(counters::indexOf).toArray(),
        one.reset().stream().mapToInt(counters::indexOf).toArray(),
        IntStream.range(0, phase.size())
            .filter(i -> i != number && phase.get(i).aheadOf().contains(one.go()))
            .toArray());
  }

  private Lit[] lit(Phase phase) {
    return phase.on().stream()
        .filter(one -> build.satisfies(one.applies()))
        .map(this::lit)
        .toArray(Lit[]::new);
  }

  private Lit lit(Energised one) {
    return new Lit(
        one,
        outputs.indexOf(one.output()),
        one.from().map(this::steps).orElse(0L),
        one.until().map(this::steps).orElse(NEVER));
  }

  private boolean[] runs(Timer timer) {
    boolean[] during = new boolean[phases.size()];
    timer.during().forEach(phase -> during[phases.indexOf(phase)] = true);
    return during;
  }

  private long limit(Counter counter) {
    return value(counter.limit()).map(one -> one.getNumerator().longValue()).orElse(NEVER);
  }

  private long steps(Sequence.After after) {
    return after
        .lasting()
        .map(this::steps)
        .orElseGet(() -> steps(timer(after.timer().orElseThrow()).lasts()));
  }

  private Timer timer(String id) {
    return sequence.timers().get(timers.indexOf(id));
  }

  /** How many steps something lasts; {@link #NEVER} where the build has no value for it. */
  public long steps(Lasting lasting) {
    return seconds(lasting).map(this::steps).orElse(NEVER);
  }

  private long steps(BigFraction seconds) {
    return seconds.divide(sequence.step()).longValue();
  }

  private Optional<BigFraction> seconds(Lasting lasting) {
    return lasting.seconds().or(() -> seconds(sequence.time(lasting.time().orElseThrow())));
  }

  /** The seconds of a time on this build; absent where it has no value for it. */
  public Optional<BigFraction> seconds(Time time) {
    return Optional.ofNullable(set.get(time.id())).or(() -> value(time.rows()));
  }

  private Optional<BigFraction> value(List<Row> rows) {
    return fitting(rows).stream().findFirst().map(Row::value);
  }

  /** The rows that are for this build. */
  public List<Row> fitting(List<Row> rows) {
    return rows.stream().filter(row -> build.satisfies(row.applies())).toList();
  }

  /** All that this build has of its own; two programs of one sequence with equal ones are alike. */
  public List<Object> behaviour() {
    List<Object> own = new ArrayList<>();
    for (int phase = 0; phase < lines.length; phase++) {
      for (Line line : lines[phase]) {
        own.addAll(List.of(line.source(), line.after()));
      }
      for (Lit one : lit[phase]) {
        own.addAll(List.of(one.source(), one.from(), one.until()));
      }
    }
    LongStream.of(limits).forEach(own::add);
    return own;
  }

  /** Seconds to which times are set, by their ids. */
  public Map<String, BigFraction> set() {
    return set;
  }

  /** The sequence that it runs. */
  public Sequence sequence() {
    return sequence;
  }

  /** The build that runs it. */
  public Build build() {
    return build;
  }

  /** The number of the phase in which it begins. */
  public int start() {
    return phases.indexOf(sequence.start());
  }

  /** How many phases there are. */
  public int phaseCount() {
    return phases.size();
  }

  /** A phase by its number. */
  public Phase phase(int number) {
    return sequence.phases().get(number);
  }

  /** The number of a phase. */
  public int phase(String id) {
    return phases.indexOf(id);
  }

  /** What leads on from a phase, in the written order. */
  public Line[] lines(int phase) {
    return lines[phase];
  }

  /** What is on in a phase. */
  public Lit[] lit(int phase) {
    return lit[phase];
  }

  /** How many inputs there are. */
  public int inputCount() {
    return inputs.size();
  }

  /** An input by its number. */
  public Input input(int number) {
    return sequence.inputs().get(number);
  }

  /** The number of an input. */
  public int input(String id) {
    return inputs.indexOf(id);
  }

  /** The number of a state of an input. */
  public int state(int input, String state) {
    return sequence.inputs().get(input).states().stream()
        .map(NamedValue::id)
        .toList()
        .indexOf(state);
  }

  /** The states of all inputs as it begins; 0 for a push. */
  public int[] atStart() {
    return IntStream.range(0, inputs.size())
        .map(i -> input(i).atStart().map(state -> state(i, state)).orElse(0))
        .toArray();
  }

  /** How many clocks there are: one of the phase, then the timers. */
  public int clockCount() {
    return timers.size() + 1;
  }

  /** Whether a clock runs in a phase; clock 0 always does. */
  public boolean runs(int clock, int phase) {
    return clock == 0 || runs[clock - 1][phase];
  }

  /** Whether a clock begins again on the way from one phase to the next. */
  public boolean begins(int clock, int from, int to) {
    return clock == 0 || runs[clock - 1][to] && !runs[clock - 1][from];
  }

  /** How many counters there are. */
  public int counterCount() {
    return counters.size();
  }

  /** The number of a counter. */
  public int counter(String id) {
    return counters.indexOf(id);
  }

  /** A counter by its number. */
  public Counter counter(int number) {
    return sequence.counters().get(number);
  }

  /** How often may come what a counter counts; {@link #NEVER} without a limit. */
  public long limit(int counter) {
    return limits[counter];
  }

  /** The phase that follows where a counter has reached its limit. */
  public int limitGo(int counter) {
    return limitGo[counter];
  }

  /**
   * Counts what a line counts.
   *
   * @param counts of every counter; changed
   * @return the first counter that has reached its limit; {@link Line#NONE} where none has
   */
  public int count(Line line, long[] counts) {
    for (int counter : line.reset()) {
      counts[counter] = 0;
    }
    int reached = Line.NONE;
    for (int counter : line.count()) {
      counts[counter]++;
      if (reached == Line.NONE && counts[counter] >= limits[counter]) {
        reached = counter;
      }
    }
    return reached;
  }

  /** The phase that follows a line. */
  public int next(Line line, int reached) {
    return reached == Line.NONE ? line.go() : limitGo[reached];
  }

  /** The line that is taken where several could be; they stand in the written order. */
  public Line chosen(List<Line> enabled) {
    return enabled.stream()
        .filter(one -> !isSilenced(one, enabled))
        .findFirst()
        .orElseGet(() -> enabled.get(0));
  }

  private static boolean isSilenced(Line one, List<Line> enabled) {
    return IntStream.of(one.silencedBy())
        .anyMatch(number -> enabled.stream().anyMatch(other -> other.number() == number));
  }

  /** Pairs of lines that could be taken at once, do not do the same and are in no order. */
  public static List<List<Line>> undecided(List<Line> enabled) {
    List<List<Line>> pairs = new ArrayList<>();
    for (Line one : enabled) {
      for (Line other : enabled) {
        if (one.number() < other.number() && isUndecided(one, other)) {
          pairs.add(List.of(one, other));
        }
      }
    }
    return pairs;
  }

  private static boolean isUndecided(Line one, Line other) {
    boolean first = IntStream.of(other.silencedBy()).anyMatch(n -> n == one.number());
    boolean second = IntStream.of(one.silencedBy()).anyMatch(n -> n == other.number());
    return first == second && !one.sameAs(other);
  }
}
