package io.faultwright.logbook;

import io.faultwright.model.Sequence.Phase;
import io.faultwright.operation.Machine;
import io.faultwright.operation.Outcomes;
import io.faultwright.operation.Program;
import io.faultwright.resolve.Told;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Runs a machine along a log, and compares what was seen. Memory does not grow with the log, only
 * with what happens within the time by which its clock may be wrong.
 */
public final class Follower {
  private static final int STOPS = 10;

  private final Program program;
  private final long within;
  private final Outcomes outcomes;
  private final Stays stays;
  private final Comparison comparison;
  private final Latest<Came> phases;
  private final Latest<Came> stops = new Latest<>(STOPS);
  private final Machine machine;
  private final Map<Told, Optional<String>> shownStops = new HashMap<>();
  private Optional<String> stopSeen = Optional.empty();
  private long entries;
  private long end;

  /**
   * @param holds whether what was seen holds until the log says something else
   * @param within steps by which the clock of the log may be wrong
   * @param last how many phases are kept
   */
  public Follower(Program program, boolean holds, long within, int last) {
    this.program = program;
    this.within = within;
    this.outcomes = new Outcomes(program);
    this.phases = new Latest<>(last);
    this.stays = new Stays(this::came);
    this.comparison = new Comparison(program, within, holds, stays);
    this.machine =
        new Machine(
            program,
            (step, phase, reason) -> {
              outcomes.entered(step, phase, reason);
              stays.entered(step, phase, reason);
            });
  }

  private void came(Came came) {
    phases.add(came);
    if (program.phase(came.now().phase()).stop()) {
      stops.add(came);
    }
  }

  /** The next entry, not before the last one. */
  public void accept(Entry entry) {
    entries++;
    if (entry.step() > end) {
      end = entry.step();
      advance(end);
    }
    Said said = entry.said();
    if (said.kind() == Said.Kind.EVENT) {
      machine.happen(entry.step(), said.number(), said.value());
    } else if (said.kind() == Said.Kind.SEEN) {
      comparison.see(entry);
      stopSeen = stops(entry.told()).or(() -> stopSeen);
    }
  }

  /** Looked up once for each thing that can be said; there are few. */
  private Optional<String> stops(Told told) {
    return shownStops.computeIfAbsent(told, this::stop);
  }

  /** The stop that this shows; a display that is shown in another phase too tells none. */
  private Optional<String> stop(Told told) {
    List<Phase> shown =
        program.sequence().phases().stream().filter(phase -> shows(told, phase)).toList();
    return shown.size() == 1 && shown.get(0).stop()
        ? Optional.of(shown.get(0).id())
        : Optional.empty();
  }

  private static boolean shows(Told told, Phase phase) {
    return told instanceof Told.PhaseIs one && one.phase().equals(phase.id())
        || told instanceof Told.Shows text
            && phase.display().filter(text.display()::equals).isPresent();
  }

  /** Goes change by change, so that a log may be silent for long. */
  private void advance(long step) {
    while (machine.now() < step) {
      machine.settle();
      machine.passTo(Math.min(step, machine.nextChange()));
      comparison.upTo(machine.now(), end);
    }
  }

  /**
   * The log has ended.
   *
   * @param until a step up to which it is followed further
   */
  public Followed end(long until) {
    long told = end;
    advance(until);
    end = Math.max(end, until);
    machine.settle();
    Followed.Some<Came> kept = phases.some();
    Followed.Some<Came> stopped = stops.some();
    SortedMap<String, Long> counts = counts();
    Outcomes.Snapshot outcome = outcomes.snapshot();
    compareRest(told);
    return new Followed(
        program,
        within,
        entries,
        comparison.seen(),
        end,
        kept,
        stopped,
        comparison.partings(),
        counts,
        outcome,
        stopSeen);
  }

  /** What was seen at the end may come a little later in the model. */
  private void compareRest(long told) {
    if (comparison.isWaiting() && within > 0) {
      machine.passTo(end + within);
      machine.settle();
    }
    comparison.upTo(end + within + 1, told);
  }

  private SortedMap<String, Long> counts() {
    SortedMap<String, Long> counts = new TreeMap<>();
    for (int i = 0; i < program.counterCount(); i++) {
      counts.put(program.counter(i).id(), machine.count(i));
    }
    return counts;
  }
}
