package io.faultwright.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.operation.HeatingCycle;
import io.faultwright.operation.Program;
import io.faultwright.resolve.Told;
import java.io.BufferedReader;
import java.io.Reader;
import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** On software 2.9 heating lasts 3 min at most: a call at 0:10 heats from 1:10 to 4:10. */
class FollowerTest {
  private static final String CALL = "0:10 call becomes made";

  private static Parting first(Followed followed) {
    return followed.partings().kept().get(0);
  }

  private static boolean agrees(long within, String... lines) {
    return Logs.follow(Logs.typed(lines), within).agrees();
  }

  @Test
  void aChangeAgreesWithinTheToleranceAndPartsASecondLater() {
    assertTrue(agrees(2, CALL, "1:10 heater on", "4:08 heater off"));
    assertTrue(agrees(2, CALL, "1:10 heater on", "4:12 heater off"));
    assertTrue(!agrees(2, CALL, "1:10 heater on", "4:07 heater off"));
    assertTrue(!agrees(2, CALL, "1:10 heater on", "4:13 heater off"));
    assertTrue(agrees(0, CALL, "1:10 heater on", "4:10 heater off"));
    assertTrue(!agrees(0, CALL, "1:10 heater on", "4:11 heater off"));
  }

  @Test
  void whatIsSeenForTheFirstTimeHasToBeSoThen() {
    assertTrue(agrees(1, CALL, "4:09 heater on"));
    assertTrue(agrees(1, CALL, "4:11 heater on"));
    assertTrue(!agrees(1, CALL, "4:12 heater on"));
    assertTrue(agrees(1, CALL, "9:00 shows COOL", "9:00 phase building"));
    assertTrue(!agrees(1, CALL, "9:00 shows HEAT"));
  }

  @Test
  void aPartingTellsBothSidesAndSinceWhen() {
    Parting parting = first(Logs.follow(Logs.typed(CALL, "1:10 heater on", "5:10 heater off"), 1));
    assertEquals(310, parting.step());
    assertTrue(parting.changed());
    assertEquals("a.log:3:6", parting.entry().place().toString());
    assertEquals(new Told.OutputIs("heater", false), parting.model());
    assertEquals(250, parting.since());
    assertEquals(HeatingCycle.on("2.9").phase("building"), parting.came().now().phase());
  }

  @Test
  void whatAPersonNotesHoldsForThatMomentOnly() {
    assertTrue(agrees(1, CALL, "1:10 heater on", "20:00 end"));
  }

  /** In a controller's log the heater is on until the log says something else. */
  @Test
  void whatAControllerWritesHolds() {
    for (long within : List.of(0L, 1L, 7L)) {
      LogInput log =
          Logs.table(Logs.LONG, "When,Tag,Val", "8:00:00,DI1,1", "8:01:00,DO1,1", "8:30:00,T1,9");
      Parting parting = first(Logs.follow(log, within));
      // heating from 1:00 to 4:00; at 4:00 a log may tell either
      assertEquals(240 + within + 1, parting.step());
      assertEquals(240, parting.since());
      assertEquals(60, parting.entry().step());
    }
  }

  @Test
  void itHoldsNoLongerThanTheLog() {
    for (String end : List.of("8:04:01", "8:04:02")) {
      LogInput log =
          Logs.table(Logs.LONG, "When,Tag,Val", "8:00:00,DI1,1", "8:01:00,DO1,1", end + ",T1,9");
      assertEquals(end.equals("8:04:01"), Logs.follow(log, 1).agrees(), end);
    }
  }

  /** From 4:10 on the heater is off in the model; the log says so a minute later. */
  @Test
  void oneSignalPartsOnceUntilItAgreesAgain() {
    LogInput log =
        Logs.table(
            Logs.LONG,
            "When,Tag,Val",
            "8:00:00,DI1,1",
            "8:01:00,DO1,1",
            "8:05:00,DO1,0",
            "8:20:00,T1,9");
    Followed followed = Logs.follow(log, 1);
    // on for too long; then off while the model heats again from 15:00 on
    assertEquals(2, followed.partings().all());
    assertEquals(
        List.of(242L, 902L), followed.partings().kept().stream().map(Parting::step).toList());
  }

  @Test
  void theModelGoesOnAfterTheLastEntryIfAsked() {
    LogInput log = Logs.typed(CALL, "2:38 release-switch opens");
    assertEquals(
        Optional.empty(), Logs.follow(log, HeatingCycle.on("2.9"), 1, 182).outcomes().stop());
    log = Logs.typed(CALL, "2:38 release-switch opens");
    assertEquals(
        Optional.of("full-stop"),
        Logs.follow(log, HeatingCycle.on("2.9"), 1, 183).outcomes().stop());
    assertEquals(
        Optional.of("full-stop"),
        Logs.follow(Logs.typed(CALL, "2:38 release-switch opens", "3:03 end"), 1)
            .outcomes()
            .stop());
  }

  /** What was seen at the very end may come a little later in the model, which is not told then. */
  @Test
  void whatComesAfterTheEndIsComparedAndNotTold() {
    Followed followed = Logs.follow(Logs.typed(CALL, "0:10 heater off", "1:09 heater on"), 1);
    assertTrue(followed.agrees());
    assertEquals(2, followed.phases().all());
  }

  @Test
  void onlyTheLastPhasesAreKept() {
    LogInput log = Logs.typed(CALL, "2 h end");
    Follower follower = new Follower(HeatingCycle.on("2.9"), false, 1, 3);
    Logs.all(log).forEach(follower::accept);
    Followed followed = follower.end(0);
    assertEquals(3, followed.phases().kept().size());
    assertEquals("long-stop", lastPhase(followed));
    // standby, then three times draining and heating, two pauses between, and the stop
    assertEquals(10, followed.phases().all());
  }

  private static String lastPhase(Followed followed) {
    List<Came> kept = followed.phases().kept();
    return followed.program().phase(kept.get(kept.size() - 1).now().phase()).id();
  }

  /** Of a million entries none is kept but the last of each signal. */
  @Test
  void noEntryIsKept() {
    Program program = HeatingCycle.on("2.9");
    long lines = 1_000_000;
    LogInput log =
        LogFile.open("long.log", new BufferedReader(new Cycles(lines)), Optional.empty(), program);
    Follower follower = new Follower(program, log.holds(), 1, 10);
    List<WeakReference<Entry>> sampled = new ArrayList<>();
    Optional<Entry> entry = log.next();
    for (long i = 0; entry.isPresent(); i++) {
      follower.accept(entry.get());
      if (i % 1000 == 0) {
        sampled.add(new WeakReference<>(entry.get()));
      }
      entry = log.next();
    }
    System.gc();
    long kept = sampled.stream().filter(one -> one.get() != null).count();
    Followed followed = follower.end(0);
    assertEquals(lines, followed.entries());
    assertTrue(followed.agrees(), followed.partings().toString());
    assertTrue(kept < 10, kept + " of " + sampled.size());
  }

  /** Cycles of a call, a heater that is seen, a release and an end of the call, made as read. */
  private static final class Cycles extends Reader {
    private static final int IN_A_CYCLE = 5;
    private static final String[] SAID = {
      "call becomes made",
      "phase heating",
      "release-switch opens",
      "release-switch closes",
      "call becomes none"
    };
    private static final int[] AT = {10, 70, 158, 161, 300};

    private final long lines;
    private long line;
    private String rest = "";

    Cycles(long lines) {
      this.lines = lines;
    }

    @Override
    public int read(char[] into, int from, int most) {
      if (rest.isEmpty() && line == lines) {
        return -1;
      }
      if (rest.isEmpty()) {
        int at = (int) (line % IN_A_CYCLE);
        rest = line / IN_A_CYCLE * 400 + AT[at] + " s " + SAID[at] + "\n";
        line++;
      }
      int length = Math.min(most, rest.length());
      rest.getChars(0, length, into, from);
      rest = rest.substring(length);
      return length;
    }

    @Override
    public void close() {}
  }
}
