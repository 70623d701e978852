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
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Goes every way that a machine can go: at every step, any input may change, any number of times.
 * Moments that differ in their clocks alone are looked at together.
 */
final class Explorer {
  private static final int MOST_SETS = 30_000;

  private final Program program;
  private final Explored explored;
  private final Deque<Reach> open = new ArrayDeque<>();
  private final Map<Spot, List<Bounds>> seen = new HashMap<>();
  private final long[][] greatest;
  private int sets;

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
    open.add(first);
    while (!open.isEmpty()) {
      Reach next = open.pollFirst();
      if (isNew(next)) {
        happen(next);
        settle(next, 0);
      }
    }
  }

  private static List<Integer> boxed(int[] numbers) {
    return Arrays.stream(numbers).boxed().toList();
  }

  /** Whether some of its moments were not looked at yet; they are from now on. */
  private boolean isNew(Reach reach) {
    List<Bounds> known = seen.computeIfAbsent(reach.spot(), spot -> new ArrayList<>());
    if (known.stream().anyMatch(bounds -> bounds.includes(reach.bounds()))) {
      return false;
    }
    if (sets >= MOST_SETS) {
      explored.cutShort();
      return false;
    }
    known.removeIf(bounds -> reach.bounds().includes(bounds));
    known.add(reach.bounds());
    sets++;
    return true;
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
      open.addLast(piece.ready().isEmpty() ? there : take(there, piece));
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
  private void settle(Reach reach, int taken) {
    if (taken > mostAtOnce()) {
      explored.restless(reach);
      return;
    }
    int[] inputs = reach.spot().states();
    List<Line> lines =
        Arrays.stream(program.lines(reach.spot().phase()))
            .filter(line -> !line.waits() && line.statesHold(inputs))
            .toList();
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
      if (piece.ready().isEmpty()) {
        rest(there, lines);
      } else {
        settle(take(there, piece), taken + 1);
      }
    }
  }

  /** Whoever takes more lines than this at once has been somewhere twice. */
  private int mostAtOnce() {
    long counts = 1L << Math.min(12, program.clockCount() - 1);
    for (int i = 0; i < program.counterCount(); i++) {
      counts *= program.limit(i) == Program.NEVER ? 1 : program.limit(i) + 1;
    }
    return (int) Math.min(10_000, program.phaseCount() * counts + 1);
  }

  private void look(Piece piece, Reach there) {
    Program.undecided(piece.ready()).forEach(pair -> explored.undecided(pair, there));
  }

  private Reach take(Reach there, Piece piece) {
    Line line = program.chosen(piece.ready());
    long[] counts = there.spot().counts().stream().mapToLong(Long::longValue).toArray();
    int reached = program.count(line, counts);
    int next = program.next(line, reached);
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
    Bounds bounds = there.bounds().later();
    List<Limit> limits = new ArrayList<>();
    for (Line line : lines) {
      if (line.after() != Program.NEVER) {
        bounds = bounds.atMost(line.clock(), line.after());
        limits.add(new Limit(line.clock(), false, line.after()));
      }
    }
    open.addFirst(
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
          lookTogether(there, apart, lit[i], lit[j]);
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
      explored.together(new Both(apart, first, second, phase), there.within(limits));
    }
  }
}
