package io.faultwright.logbook;

import io.faultwright.operation.Machine;
import io.faultwright.operation.Outcomes;
import io.faultwright.operation.Program;
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
  private long entries;
  private long end;

  /**
   * @param within steps by which the clock of the log may be wrong
   * @param last how many phases are kept
   */
  public Follower(Program program, long within, int last) {
    this.program = program;
    this.within = within;
    this.outcomes = new Outcomes(program);
    this.phases = new Latest<>(last);
    this.stays = new Stays(this::came);
    this.comparison = new Comparison(program, within, stays);
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
      machine.passTo(end);
      comparison.upTo(end);
    }
    Said said = entry.said();
    if (said.kind() == Said.Kind.EVENT) {
      machine.happen(entry.step(), said.number(), said.value());
    } else if (said.kind() == Said.Kind.SEEN) {
      comparison.see(entry);
    }
  }

  /**
   * The log has ended.
   *
   * @param until a step up to which it is followed further
   * @param holds whether what was seen last has lasted up to the last entry
   */
  public Followed end(long until, boolean holds) {
    if (holds) {
      comparison.hold(end);
    }
    end = Math.max(end, until);
    machine.passTo(end);
    machine.settle();
    compareRest();
    return new Followed(
        program,
        within,
        entries,
        comparison.seen(),
        end,
        phases.some(),
        stops.some(),
        comparison.partings(),
        counts(),
        outcomes.snapshot());
  }

  /** What was seen at the end may come a little later in the model. */
  private void compareRest() {
    if (comparison.isWaiting() && within > 0) {
      machine.passTo(end + within);
      machine.settle();
    }
    comparison.upTo(end + within + 1);
  }

  private SortedMap<String, Long> counts() {
    SortedMap<String, Long> counts = new TreeMap<>();
    for (int i = 0; i < program.counterCount(); i++) {
      counts.put(program.counter(i).id(), machine.count(i));
    }
    return counts;
  }
}
