package io.faultwright.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.Sequence.Event;
import io.faultwright.operation.HeatingCycle;
import io.faultwright.operation.Recorder;
import io.faultwright.operation.Timeline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Logs made of what the model itself does, with a clock that is wrong by no more than the
 * tolerance: they agree. One change beyond it: they part.
 */
class FollowingLawsTest {
  private static final int SEEDS = 500;
  private static final long END = 20_000;

  /** A row of the log; rows of one step stand in the order in which they were made. */
  private record Row(long step, String signal, String value) {
    String line() {
      return "%d:%02d:%02d,%s,%s"
          .formatted(8 + step / 3600, step / 60 % 60, step % 60, signal, value);
    }
  }

  private final List<Row> rows = new ArrayList<>();
  private Timeline timeline;

  /** Random calls, openings and pushes. */
  private void run(Random random) {
    rows.clear();
    Recorder recorder = new Recorder(HeatingCycle.on("2.9"));
    boolean call = false;
    boolean open = false;
    for (long step = 1; step < END; step += 1 + random.nextInt(300)) {
      boolean turn = random.nextBoolean();
      call ^= !turn;
      open ^= turn;
      String value = (turn ? open : call) ? "1" : "0";
      String state = turn ? open ? "open" : "closed" : call ? "made" : "none";
      recorder.happen(step, new Event(turn ? "release-switch" : "call", Optional.of(state)));
      rows.add(new Row(step, turn ? "DI2" : "DI1", value));
    }
    timeline = recorder.upTo(END);
  }

  /** When the heater goes on, off, on, …, first to last. */
  private List<Long> changes() {
    return timeline.on("heater").stream()
        .flatMap(on -> List.of(on.from(), on.to()).stream())
        .filter(step -> step < END)
        .toList();
  }

  private void heater(List<Long> changes) {
    rows.add(0, new Row(0, "DO1", "0"));
    for (int i = 0; i < changes.size(); i++) {
      rows.add(new Row(changes.get(i), "DO1", i % 2 == 0 ? "1" : "0"));
    }
    rows.add(new Row(END, "T1", "9"));
    rows.sort(Comparator.comparingLong(Row::step));
  }

  private Followed follow(long within) {
    List<String> lines = new ArrayList<>(List.of("When,Tag,Val"));
    rows.forEach(row -> lines.add(row.line()));
    return Logs.follow(Logs.table(Logs.LONG, lines.toArray(String[]::new)), within);
  }

  private static List<Long> jittered(List<Long> changes, long within, Random random) {
    List<Long> moved = new ArrayList<>();
    long earliest = 0;
    for (long change : changes) {
      long to = change + random.nextInt((int) (2 * within + 1)) - within;
      earliest = Math.min(END, Math.max(earliest, to));
      moved.add(earliest);
    }
    return moved;
  }

  @Test
  void aClockWithinTheToleranceAgrees() {
    long compared = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      long within = random.nextInt(5);
      run(random);
      heater(jittered(changes(), within, random));
      Followed followed = follow(within);
      assertTrue(followed.agrees(), "seed " + seed + ": " + followed.partings());
      compared += followed.seen();
    }
    assertTrue(compared > 4_000, compared + " compared");
  }

  @Test
  void oneChangeBeyondItPartsThere() {
    int moved = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      long within = random.nextInt(5);
      run(random);
      List<Long> changes = new ArrayList<>(changes());
      int which = 1 + random.nextInt(Math.max(1, changes.size() - 2));
      if (which + 1 < changes.size() && isApart(changes, which, 4 * within + 4)) {
        long by = (within + 1) * (random.nextBoolean() ? 1 : -1);
        changes.set(which, changes.get(which) + by);
        heater(changes);
        Followed followed = follow(within);
        assertEquals(1, followed.partings().all(), "seed " + seed);
        long at = followed.partings().kept().get(0).step();
        assertTrue(Math.abs(at - changes.get(which)) <= within + 1, "seed " + seed + " at " + at);
        moved++;
      }
    }
    assertTrue(moved > SEEDS / 2, moved + " moved");
  }

  private static boolean isApart(List<Long> changes, int which, long by) {
    return changes.get(which) - changes.get(which - 1) > by
        && changes.get(which + 1) - changes.get(which) > by;
  }
}
