package io.faultwright.analysis.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.Build;
import io.faultwright.model.Model;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Event;
import io.faultwright.model.Sequence.Input;
import io.faultwright.operation.Program;
import io.faultwright.operation.Recorder;
import io.faultwright.operation.Restless;
import io.faultwright.operation.Timeline;
import io.faultwright.operation.Timeline.Stay;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** A thousand small sequences: proofs and runs against a reading of the meaning of its own. */
class RandomSequenceTest {
  private static final int SEQUENCES = 1_000;
  private static final int SECONDS = 40;
  private static final Build BUILD =
      new Build(
          new Model(
              "M",
              new Place("random.yaml", 1, 1, 1),
              "M",
              "m",
              new TreeMap<>(),
              List.of(),
              Optional.empty(),
              new TreeMap<>()),
          Optional.empty());

  @Test
  void proofsAgreeWithEveryStateSecondBySecond() {
    Map<String, Integer> shown = new TreeMap<>();
    LongStream.range(0, SEQUENCES).forEach(seed -> agree(seed, shown));
    for (String kind :
        List.of("restless", "undecided", "together", "unreached", "idle", "never left")) {
      int times = shown.getOrDefault(kind, 0);
      assertTrue(times > SEQUENCES / 20, kind + " in " + times + " of them only: " + shown);
    }
  }

  private static void agree(long seed, Map<String, Integer> shown) {
    Sequence sequence = RandomSequence.of(seed);
    SecondBySecond plain = new SecondBySecond(sequence);
    plain.explore();
    Explored proof = Explorer.explore(Program.of(sequence, BUILD));
    String name = "sequence " + seed;
    assertTrue(proof.isWhole(), name);
    Map<String, Integer> fewest = new TreeMap<>();
    proof.phases().forEach((phase, reach) -> fewest.put(phase, reach.events()));
    assertEquals(plain.fewestEvents, fewest, name);
    assertEquals(plain.taken, proof.taken().keySet(), name);
    Set<SecondBySecond.Pair> pairs = new HashSet<>();
    proof.undecided().keySet().forEach(p -> pairs.add(new SecondBySecond.Pair(p.one(), p.other())));
    assertEquals(plain.undecided, pairs, name);
    Set<String> together = new TreeSet<>();
    proof.together().keySet().forEach(both -> together.add(both.phase()));
    assertEquals(plain.together, together, name);
    assertEquals(plain.restless, proof.restless().isPresent(), name);
    for (String phase : fewest.keySet()) {
      boolean left = sequence.phase(phase).next().stream().anyMatch(plain.taken::contains);
      assertEquals(!left, Shown.isNeverLeft(proof.program(), phase), name + " " + phase);
      count(shown, "never left", !left);
    }
    proof.phases().values().forEach(reach -> walk(proof.program(), reach, name));
    proof.undecided().values().forEach(reach -> walk(proof.program(), reach, name));
    proof.together().values().forEach(reach -> walk(proof.program(), reach, name));
    count(shown, "restless", plain.restless);
    count(shown, "undecided", !plain.undecided.isEmpty());
    count(shown, "together", !plain.together.isEmpty());
    count(shown, "unreached", plain.fewestEvents.size() < sequence.phases().size());
    int lines = sequence.phases().stream().mapToInt(phase -> phase.next().size()).sum();
    count(shown, "idle", plain.taken.size() < lines);
  }

  private static void count(Map<String, Integer> shown, String kind, boolean found) {
    shown.merge(kind, found ? 1 : 0, Integer::sum);
  }

  /** The way that the proof tells, gone by the machine: the same phases. */
  private static void walk(Program program, Reach reach, String name) {
    Way way = Way.to(program, reach);
    assertEquals(reach.events(), way.events().size(), name);
    Recorder recorder = new Recorder(program);
    way.events().forEach(at -> recorder.happen(at.step(), at.event().orElseThrow()));
    List<String> expected =
        way.phases().stream().map(at -> at.step() + " " + at.phase().orElseThrow()).toList();
    List<String> gone = new ArrayList<>();
    try {
      recorder.upTo(way.end()).stays().forEach(stay -> gone.add(stay.from() + " " + stay.phase()));
    } catch (Restless restless) {
      return;
    }
    assertTrue(gone.size() >= expected.size(), name + " " + way + " " + gone);
    assertEquals(expected, gone.subList(0, expected.size()), name + " " + way);
  }

  @Test
  void runsAgreeSecondBySecond() {
    LongStream.range(0, SEQUENCES).forEach(RandomSequenceTest::runsAgree);
  }

  private static void runsAgree(long seed) {
    Sequence sequence = RandomSequence.of(seed);
    List<List<Event>> seconds = events(sequence, new Random(~seed));
    List<String> expected = new SecondBySecond(sequence).run(seconds);
    assertEquals(expected, phases(sequence, seconds), "sequence " + seed);
  }

  private static List<List<Event>> events(Sequence sequence, Random random) {
    List<List<Event>> seconds = new ArrayList<>();
    for (int i = 0; i < SECONDS; i++) {
      List<Event> now = new ArrayList<>();
      while (random.nextInt(3) == 0) {
        Input input = sequence.inputs().get(random.nextInt(sequence.inputs().size()));
        now.add(
            new Event(
                input.id(),
                input.isPush()
                    ? Optional.empty()
                    : Optional.of(input.states().get(random.nextInt(2)).id())));
      }
      seconds.add(now);
    }
    return seconds;
  }

  /** The phase at the end of each second. */
  private static List<String> phases(Sequence sequence, List<List<Event>> seconds) {
    Recorder recorder = new Recorder(Program.of(sequence, BUILD));
    List<String> phases = new ArrayList<>();
    try {
      for (int second = 0; second < seconds.size(); second++) {
        for (Event event : seconds.get(second)) {
          recorder.happen(second, event);
        }
        Timeline line = recorder.upTo(second);
        List<Stay> stays = line.stays();
        phases.add(stays.get(stays.size() - 1).phase());
      }
    } catch (Restless restless) {
      phases.add("restless");
    }
    return phases;
  }
}
