package io.faultwright.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Course;
import io.faultwright.model.Sequence.Event;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class OutcomesTest {
  private static Timeline followed(String software, String course) {
    Course found =
        HeatingCycle.SEQUENCE.courses().stream()
            .filter(one -> one.id().equals(course))
            .findFirst()
            .orElseThrow();
    return Courses.follow(HeatingCycle.on(software), found);
  }

  @Test
  void tellsTheStopWhatWasShownAndHowLongEachPhaseTook() {
    Outcomes.Snapshot known = Outcomes.of(followed("2.10", "nothing-released"));
    assertEquals(Optional.of("full-stop"), known.stop());
    assertEquals(Optional.of("FULL"), known.display());
    assertEquals(
        Map.of(
            "standby", BigFraction.of(10),
            "draining", BigFraction.of(60),
            "heating", BigFraction.of(88),
            "releasing", BigFraction.of(25)),
        known.lastStay());
  }

  @Test
  void countsAreThoseOfTheMachine() {
    Timeline line = followed("2.9", "stuck-closed");
    Outcomes.Snapshot known = Outcomes.of(line);
    assertEquals(Optional.of("long-stop"), known.stop());
    assertEquals(line.counts(), known.counts());
  }

  /** The reset button begins the count again; what was counted as it stopped is still told. */
  @Test
  void countsStayAsTheStopFoundThem() {
    Program program = HeatingCycle.on("2.9");
    Outcomes outcomes = new Outcomes(program);
    Machine machine = new Machine(program, outcomes);
    machine.happen(10, program.input("call"), 1);
    machine.passTo(4_000);
    machine.happen(4_000, program.input("reset-button"), Line.NONE);
    assertEquals(0, machine.count(0));
    assertEquals(new TreeMap<>(Map.of("long-heats", 3L)), outcomes.snapshot().counts());
    assertEquals(Optional.of("WAIT"), outcomes.snapshot().display());
  }

  @Test
  void withoutAStopTheyAreAsTheyAreNow() {
    Timeline line = followed("2.10", "good");
    assertEquals(Optional.empty(), Outcomes.of(line).stop());
    assertEquals(line.counts(), Outcomes.of(line).counts());
  }

  /** Its last phase shows nothing of its own, so the display stays as it was. */
  @Test
  void aPhaseWithoutADisplayShowsWhatWasShown() {
    Path folder = Path.of("src", "test", "resources", "sequences", "heating-cycle");
    List<SourceFile> files =
        FolderReader.read(folder).files().stream()
            .map(
                file ->
                    SourceFile.of(file.path(), file.text().replace("display: WAIT", "about: W")))
            .toList();
    Sequence sequence = Resolver.resolve(new Sources(files)).sequences().get("heating-cycle");
    Recorder recorder = new Recorder(Program.of(sequence, HeatingCycle.build("2.9")));
    recorder.happen(10, new Event("call", Optional.of("made")));
    recorder.upTo(3_999);
    recorder.happen(4_000, new Event("reset-button", Optional.empty()));
    Timeline line = recorder.upTo(4_001);
    assertEquals("restart-delay", line.stays().get(line.stays().size() - 1).phase());
    assertEquals(Optional.of("LONG"), Outcomes.of(line).display());
  }
}
