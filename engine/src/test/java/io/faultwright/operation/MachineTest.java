package io.faultwright.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.model.Sequence.Course;
import io.faultwright.model.Sequence.Event;
import io.faultwright.operation.Timeline.On;
import io.faultwright.operation.Timeline.Stay;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Every boundary of the heating cycle, one second either side. */
class MachineTest {
  private static final long HEATING = 70;

  private static Event event(String input, String state) {
    return new Event(input, Optional.of(state));
  }

  /** A machine with a call at 10 s: it drains from there for 60 s, and heats from 70 s on. */
  private static Recorder called(String software) {
    Recorder recorder = new Recorder(HeatingCycle.on(software));
    recorder.happen(10, event("call", "made"));
    return recorder;
  }

  private static String phaseAt(Recorder recorder, long step) {
    List<Stay> stays = recorder.upTo(step).stays();
    return stays.get(stays.size() - 1).phase();
  }

  @Test
  void heatingLastsSixMinutesFromSoftware210On() {
    assertEquals("heating", phaseAt(called("2.10"), HEATING + 359));
    assertEquals("building", phaseAt(called("2.10"), HEATING + 360));
    assertEquals("heating", phaseAt(called("3.0"), HEATING + 359));
    assertEquals("building", phaseAt(called("3.0"), HEATING + 361));
  }

  @Test
  void heatingLastsThreeMinutesBefore() {
    assertEquals("heating", phaseAt(called("2.9"), HEATING + 179));
    assertEquals("building", phaseAt(called("2.9"), HEATING + 180));
    assertEquals("building", phaseAt(called("2.9"), HEATING + 181));
  }

  @Test
  void switchMayCloseAgainWithin25Seconds() {
    assertEquals("building", releasedFor(24));
    assertEquals("building", releasedFor(25));
    assertEquals("full-stop", releasedFor(26));
  }

  private static String releasedFor(long seconds) {
    Recorder recorder = called("2.10");
    recorder.happen(158, event("release-switch", "open"));
    List<Stay> stays = recorder.upTo(158 + Math.min(seconds, 25) - 1).stays();
    assertEquals("releasing", stays.get(stays.size() - 1).phase());
    if (seconds > 25) {
      recorder.upTo(158 + 25);
      assertEquals("full-stop", phaseAt(recorder, 158 + 25));
    } else {
      recorder.happen(158 + seconds, event("release-switch", "closed"));
    }
    return phaseAt(recorder, 158 + Math.max(seconds, 25));
  }

  @Test
  void openForLongerStopsAsFullEvenIfNothingWasReleased() {
    Timeline line = Courses.follow(HeatingCycle.on("2.10"), course("nothing-released"));
    Stay stop = line.stop().orElseThrow();
    assertEquals("full-stop", stop.phase());
    assertEquals(HEATING + 88 + 25, stop.from());
  }

  private static Course course(String id) {
    return HeatingCycle.SEQUENCE.courses().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** Common practice, no source: a limit of three in a row. */
  @Test
  void threeLongestHeatingsInARowStop() {
    Timeline line = Courses.follow(HeatingCycle.on("2.9"), course("stuck-closed"));
    List<Stay> heatings =
        line.stays().stream().filter(stay -> stay.phase().equals("heating")).toList();
    assertEquals(3, heatings.size());
    Stay stop = line.stop().orElseThrow();
    assertEquals("long-stop", stop.phase());
    // 70 s, then three heatings of 3 min with two pauses of 10 min and 60 s between them
    assertEquals(70 + 3 * 180 + 2 * 660, stop.from());
    assertEquals(Optional.of("long-heats"), stop.reason().counter());
    assertEquals(3L, line.counts().get("long-heats"));
  }

  @Test
  void aReleaseBetweenThemBeginsTheCountAgain() {
    Recorder recorder = called("2.9");
    long third = HEATING + 2 * (180 + 660);
    recorder.happen(third + 10, event("release-switch", "open"));
    recorder.happen(third + 15, event("release-switch", "closed"));
    Timeline line = recorder.upTo(third + 15 + 660 + 180);
    assertEquals(Optional.empty(), line.stop());
    assertEquals(1L, line.counts().get("long-heats"));
  }

  @Test
  void restartTakesFourMinutesOnOneControllerAndTwoOnTheOther() {
    assertRestart("2.10", 240);
    assertRestart("3.0", 120);
  }

  private static void assertRestart(String software, long delay) {
    for (long late : List.of(-1L, 0L, 1L)) {
      Recorder recorder = called(software);
      recorder.happen(100, event("release-switch", "open"));
      recorder.happen(200, event("release-switch", "closed"));
      String expected = late < 0 ? "restart-delay" : "draining";
      assertEquals(expected, phaseAt(recorder, 200 + delay + late), software + " " + late);
    }
  }

  @Test
  void drainValveAndPumpAreOnTogetherForTheFirst40Seconds() {
    Timeline line = called("2.10").upTo(HEATING);
    assertEquals(List.of(new On(10, 50)), line.on("drain-valve"));
    assertEquals(List.of(new On(10, 70)), line.on("pump"));
  }

  @Test
  void aStepThatIsOverIsNotOpenForEvents() {
    Recorder recorder = called("2.10");
    recorder.upTo(100);
    assertThrows(
        IllegalArgumentException.class,
        () -> recorder.happen(100, event("release-switch", "open")));
  }

  @Test
  void inputsThatStayAreNoEvents() {
    Recorder recorder = called("2.10");
    recorder.happen(80, event("release-switch", "closed"));
    assertEquals("heating", phaseAt(recorder, 81));
  }
}
