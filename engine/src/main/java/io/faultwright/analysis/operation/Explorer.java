package io.faultwright.analysis.operation;

import io.faultwright.analysis.operation.Explored.Both;
import io.faultwright.analysis.operation.Pieces.Piece;
import io.faultwright.analysis.operation.Reach.Limit;
import io.faultwright.model.Sequence.Apart;
import io.faultwright.model.Sequence.Event;
import io.faultwright.operation.Line;
import io.faultwright.operation.Lit;
import io.faultwright.operation.Program;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/**
 * Goes every way that a machine can go: at every step, any input may change, any number of times.
 * Moments that differ in their clocks alone are looked at together.
 */
final class Explorer {
  private static final int MOST_SETS = 30_000;

  /** As many lines at one step as the machine takes. */
  private static final int MOST_AT_ONCE = 10_000;

  /** Moments to go on from; those on shorter ways come first, then those found first. */
  private record Open(Reach reach, int number) {
    static final Comparator<Open> ORDER =
        Comparator.comparingInt((Open one) -> one.reach.events())
            .thenComparingLong(one -> one.reach.bounds().earliest())
            .thenComparingInt(Open::number);
  }

  private final Program program;
  private final Explored explored;
  private final PriorityQueue<Open> open = new PriorityQueue<>(Open.ORDER);
  private final Map<Spot, List<Reach>> seen = new HashMap<>();
  private final long[][] greatest;
  private int sets;
  private int found;

  private Explorer(Program program) {
    this.program = program;
    this.explored = new Explored(program);
    this.greatest =
        IntStream.range(0, program.phaseCount()).mapToObj(this::greatest).toArray(long[][]::new);
  }

  static Explored explore(Program program) {
    Explorer explorer = new Explorer(program);
    explorer.run();
    return explorer.explored;
  }

  /** The greatest time with which each clock is compared while in a phase, or later on. */
  private long[] greatest(int phase) {
    long[] most = new long[program.clockCount()];
    for (int other = 0; other < program.phaseCount(); other++) {
      for (Line line : program.lines(other)) {
        if (line.after() != Program.NEVER && (other == phase || line.clock() > 0)) {
          most[line.clock()] = Math.max(most[line.clock()], line.after());
        }
      }
    }
    for (Lit lit : program.lit(phase)) {
      most[0] = Math.max(most[0], Math.max(finite(lit.from()), finite(lit.until())));
    }
    return most;
  }

  private static long finite(long steps) {
    return steps == Program.NEVER ? 0 : steps;
  }

  private void run() {
    int start = program.start();
    Bounds bounds = tidy(start, Bounds.zero(program.clockCount()));
    List<Long> counts = IntStream.range(0, program.counterCount()).mapToObj(i -> 0L).toList();
    Reach first = Reach.beginning(new Spot(start, boxed(program.atStart()), counts), bounds);
    explored.reached(first);
    goOn(first);
    while (!open.isEmpty()) {
      Reach next = open.poll().reach();
      if (isNew(next)) {
        happen(next);
        settle(next);
      }
    }
  }

  private void goOn(Reach reach) {
    open.add(new Open(reach, found++));
  }

  private static List<Integer> boxed(int[] numbers) {
    return Arrays.stream(numbers).boxed().toList();
  }

  /** Whether some of its moments were not looked at yet; they are from now on. */
  private boolean isNew(Reach reach) {
    List<Reach> known = seen.computeIfAbsent(reach.spot(), spot -> new ArrayList<>());
    if (known.stream().anyMatch(old -> isCovered(reach, old))) {
      return false;
    }
    if (sets >= MOST_SETS) {
      explored.cutShort();
      return false;
    }
    known.removeIf(old -> isCovered(old, reach));
    known.add(reach);
    sets++;
    return true;
  }

  /** Whether all its moments are in another, with fewer events or as early. */
  private static boolean isCovered(Reach reach, Reach by) {
    return by.events() < reach.events()
        ? by.bounds().includesLate(reach.bounds())
        : by.events() == reach.events() && by.bounds().includes(reach.bounds());
  }

  /** Every event there can be at this step. */
  private void happen(Reach reach) {
    for (int input = 0; input < program.inputCount(); input++) {
      if (program.input(input).isPush()) {
        happen(reach, input, Line.NONE);
      } else {
        for (int state = 0; state < program.input(input).states().size(); state++) {
          if (reach.spot().inputs().get(input) != state) {
            happen(reach, input, state);
          }
        }
      }
    }
  }

  private void happen(Reach reach, int input, int state) {
    int[] inputs = reach.spot().states();
    if (state != Line.NONE) {
      inputs[input] = state;
    }
    List<Line> lines =
        Arrays.stream(program.lines(reach.spot().phase()))
            .filter(line -> line.input() == input && line.state() == state)
            .filter(line -> line.statesHold(inputs))
            .toList();
    if (state == Line.NONE && lines.isEmpty()) {
      return;
    }
    Optional<Event> event = Optional.of(event(input, state));
    Spot spot = new Spot(reach.spot().phase(), boxed(inputs), reach.spot().counts());
    for (Piece piece : Pieces.of(reach.bounds(), lines)) {
      Reach there =
          new Reach(
              Optional.of(reach),
              spot,
              piece.bounds(),
              false,
              event,
              piece.limits(),
              Optional.empty(),
              reach.events() + 1);
      look(piece, there);
      goOn(piece.ready().isEmpty() ? there : take(there, piece));
    }
  }

  private Event event(int input, int state) {
    return new Event(
        program.input(input).id(),
        state == Line.NONE
            ? Optional.empty()
            : Optional.of(program.input(input).states().get(state).id()));
  }

  /** What follows at this step once all events are through, and then the steps after it. */
  private void settle(Reach first) {
    Deque<Reach> due = new ArrayDeque<>(List.of(first));
    while (!due.isEmpty()) {
      Reach reach = due.pollFirst();
      if (comesBack(first, reach)) {
        explored.restless(reach);
      } else {
        follow(reach).forEach(due::addFirst);
      }
    }
  }

  /** Whether it was in the same moments before at this step, or took too many lines since. */
  private static boolean comesBack(Reach first, Reach reach) {
    int taken = 0;
    Reach before = reach;
    while (before != first) {
      taken += before.line().isPresent() ? 1 : 0;
      before = before.before().orElseThrow();
      boolean began = before == first || before.line().isPresent();
      if (began && before.spot().equals(reach.spot()) && before.bounds().sameAs(reach.bounds())) {
        return true;
      }
    }
    return taken > MOST_AT_ONCE;
  }

  /** Where the lines lead that are due, those cut last first. */
  private List<Reach> follow(Reach reach) {
    int[] inputs = reach.spot().states();
    List<Line> lines =
        Arrays.stream(program.lines(reach.spot().phase()))
            .filter(line -> !line.waits() && line.statesHold(inputs))
            .toList();
    List<Reach> next = new ArrayList<>();
    for (Piece piece : Pieces.of(reach.bounds(), lines)) {
      Reach there =
          new Reach(
              Optional.of(reach),
              reach.spot(),
              piece.bounds(),
              false,
              Optional.empty(),
              piece.limits(),
              Optional.empty(),
              reach.events());
      look(piece, there);
      lookUntil(there);
      if (piece.ready().isEmpty()) {
        rest(there, lines);
      } else {
        next.add(0, take(there, piece));
      }
    }
    return next;
  }

  private void look(Piece piece, Reach there) {
    for (List<Line> pair : Program.undecided(piece.ready())) {
      explored.undecided(pair, there);
      pair.forEach(line -> leave(there, line.go()));
    }
  }

  private void leave(Reach from, int to) {
    if (from.spot().phase() != to) {
      explored.left(program.phase(from.spot().phase()).id());
    }
  }

  /** Times after which an output goes off; those at which the phase ends as well are over too. */
  private void lookUntil(Reach there) {
    for (Lit lit : program.lit(there.spot().phase())) {
      if (lit.until() != Program.NEVER && !there.bounds().atLeast(0, lit.until()).isEmpty()) {
        lit.source().until().ifPresent(explored::over);
      }
    }
  }

  /** Times after which an output comes on: at the end of a step of the phase, and not off again. */
  private void lookFrom(Reach there) {
    for (Lit lit : program.lit(there.spot().phase())) {
      boolean on = lit.from() != Program.NEVER && lit.from() < lit.until();
      if (on && !there.bounds().atLeast(0, lit.from()).isEmpty()) {
        lit.source().from().ifPresent(explored::over);
      }
    }
  }

  private Reach take(Reach there, Piece piece) {
    Line line = program.chosen(piece.ready());
    long[] counts = there.spot().counts().stream().mapToLong(Long::longValue).toArray();
    int reached = program.count(line, counts);
    int next = program.next(line, reached);
    leave(there, next);
    Bounds bounds = there.bounds();
    for (int clock = 0; clock < program.clockCount(); clock++) {
      bounds = program.begins(clock, there.spot().phase(), next) ? bounds.begun(clock) : bounds;
    }
    Spot spot = new Spot(next, there.spot().inputs(), told(counts));
    Reach after =
        new Reach(
            Optional.of(there),
            spot,
            tidy(next, bounds),
            false,
            Optional.empty(),
            List.of(),
            Optional.of(line),
            there.events());
    explored.taken(line.source(), after);
    if (program.atLimit(line, counts).stream().mapToInt(program::limitGo).distinct().count() > 1) {
      explored.counted(line.source(), after);
    }
    explored.reached(after);
    return after;
  }

  /** Counts beyond the limit are not told apart, nor those without one. */
  private List<Long> told(long[] counts) {
    return IntStream.range(0, counts.length)
        .mapToObj(
            i -> program.limit(i) == Program.NEVER ? 0L : Math.min(counts[i], program.limit(i)))
        .toList();
  }

  private Bounds tidy(int phase, Bounds bounds) {
    Bounds tidied = bounds;
    for (int clock = 0; clock < program.clockCount(); clock++) {
      tidied = program.runs(clock, phase) ? tidied : tidied.freed(clock);
    }
    return tidied.blurred(greatest[phase]);
  }

  /** Nothing more is due at this step; later steps come, up to where something is due again. */
  private void rest(Reach there, List<Line> lines) {
    lookTogether(there);
    lookFrom(there);
    Bounds bounds = there.bounds().later();
    List<Limit> limits = new ArrayList<>();
    for (Line line : lines) {
      if (line.after() != Program.NEVER) {
        bounds = bounds.atMost(line.clock(), line.after());
        limits.add(new Limit(line.clock(), false, line.after()));
      }
    }
    goOn(
        new Reach(
            Optional.of(there),
            there.spot(),
            tidy(there.spot().phase(), bounds),
            true,
            Optional.empty(),
            limits,
            Optional.empty(),
            there.events()));
  }

  private void lookTogether(Reach there) {
    Lit[] lit = program.lit(there.spot().phase());
    for (Apart apart : program.sequence().apart()) {
      for (int i = 0; i < lit.length; i++) {
        for (int j = i + 1; j < lit.length; j++) {
          boolean ordered = lit[i].output() < lit[j].output();
          lookTogether(there, apart, lit[ordered ? i : j], lit[ordered ? j : i]);
        }
      }
    }
  }

  private void lookTogether(Reach there, Apart apart, Lit one, Lit other) {
    String first = one.source().output();
    String second = other.source().output();
    boolean concerned =
        !first.equals(second)
            && apart.outputs().contains(first)
            && apart.outputs().contains(second);
    if (!concerned) {
      return;
    }
    long from = Math.max(one.from(), other.from());
    long until = Math.min(one.until(), other.until());
    if (from == Program.NEVER || until <= from) {
      return;
    }
    List<Limit> limits = new ArrayList<>();
    Bounds bounds = there.bounds().atLeast(0, from);
    limits.add(new Limit(0, true, from));
    if (until != Program.NEVER) {
      bounds = bounds.atMost(0, until - 1);
      limits.add(new Limit(0, false, until - 1));
    }
    if (!bounds.isEmpty()) {
      String phase = program.phase(there.spot().phase()).id();
      explored.together(new Both(apart, first, second, phase), there.within(bounds, limits));
    }
  }
}
