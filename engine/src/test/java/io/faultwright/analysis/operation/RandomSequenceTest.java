package io.faultwright.analysis.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.finding.EventCourse;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Build;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Event;
import io.faultwright.model.Sequence.Input;
import io.faultwright.model.Sequence.Time;
import io.faultwright.operation.Line;
import io.faultwright.operation.Machine;
import io.faultwright.operation.Program;
import io.faultwright.operation.Recorder;
import io.faultwright.operation.Restless;
import io.faultwright.operation.Timeline;
import io.faultwright.operation.Timeline.Stay;
import io.faultwright.operation.Watcher;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.stream.LongStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** A thousand small sequences: proofs and runs against a reading of the meaning of its own. */
class RandomSequenceTest {
  private static final int SEQUENCES = Integer.getInteger("random.sequences", 1_000);
  private static final int STEPS = 40;

  /** Kinds that the proofs find; each has to come up often. */
  private static final Set<FindingKind> KINDS =
      Set.of(
          FindingKind.PHASE_NEVER_REACHED,
          FindingKind.PHASE_NEVER_LEFT,
          FindingKind.LINE_NEVER_TAKEN,
          FindingKind.TIMER_NEVER_EXPIRES,
          FindingKind.LINES_AT_ONCE,
          FindingKind.ENERGISED_TOGETHER,
          FindingKind.SEQUENCE_NEVER_RESTS,
          FindingKind.TIME_UNCLEAR);

  /** A build, with the times as delivered or one of them set to an end of its stretch. */
  private record Variation(Build build, Map<String, BigFraction> set) {}

  @Test
  void proofsAgreeWithEveryStateStepByStep() {
    Map<FindingKind, Integer> shown = new ConcurrentSkipListMap<>();
    LongStream.range(0, SEQUENCES).parallel().forEach(seed -> agree(seed, shown));
    for (FindingKind kind : KINDS) {
      int times = shown.getOrDefault(kind, 0);
      assertTrue(times >= SEQUENCES / 20, kind + " in " + times + " of them only: " + shown);
    }
  }

  private static void agree(long seed, Map<FindingKind, Integer> shown) {
    RandomSequence.Made made = RandomSequence.of(seed);
    Sequence sequence = made.sequence();
    List<SecondBySecond> plain = new ArrayList<>();
    for (Variation way : ways(made)) {
      SecondBySecond one = new SecondBySecond(sequence, way.build(), way.set());
      one.explore();
      plain.add(one);
      Explored proof = Explorer.explore(Program.of(sequence, way.build(), way.set()));
      agree(one, proof, "sequence " + seed + " " + way);
    }
    List<Finding> findings = SequenceAnalysis.of(sequence, made.builds());
    new ExpectedFindings(sequence, plain).agree(findings, "sequence " + seed);
    findings.stream()
        .map(Finding::kind)
        .distinct()
        .forEach(kind -> shown.merge(kind, 1, Integer::sum));
  }

  /** The course that is told, gone by the machine of that build: the same phases. */
  private static void replay(RandomSequence.Made made, Finding finding, String name) {
    if (finding.course().isEmpty()) {
      return;
    }
    EventCourse course = finding.course().get();
    Map<String, String> facts = finding.witness().orElseThrow().equipment();
    Build build =
        made.builds().stream().filter(one -> one.facts().equals(facts)).findFirst().orElseThrow();
    Program program = Program.of(made.sequence(), build, course.set());
    List<String> told = new ArrayList<>();
    List<String> gone = new ArrayList<>();
    Watcher watcher = (step, phase, reason) -> gone.add(step + " " + program.phase(phase).id());
    Machine machine = new Machine(program, watcher);
    try {
      for (EventCourse.Entry entry : course.entries()) {
        long step = entry.seconds().divide(made.sequence().step()).longValue();
        entry.phase().ifPresent(phase -> told.add(step + " " + phase));
        entry.event().ifPresent(event -> happen(machine, step, event));
      }
      machine.passTo(course.end().divide(made.sequence().step()).longValue());
      machine.settle();
    } catch (Restless restless) {
      gone.add("restless");
    }
    boolean went = gone.size() >= told.size() && told.equals(gone.subList(0, told.size()));
    assertTrue(went, name + " " + finding + " " + gone);
  }

  private static void happen(Machine machine, long step, Event event) {
    Program program = machine.program();
    int input = program.input(event.input());
    machine.happen(
        step, input, event.state().map(state -> program.state(input, state)).orElse(Line.NONE));
  }

  private static List<Variation> ways(RandomSequence.Made made) {
    List<Variation> ways = new ArrayList<>();
    made.builds().forEach(build -> ways.add(new Variation(build, Map.of())));
    for (Time time : made.sequence().times()) {
      if (time.setting().isPresent()) {
        for (Build build : made.builds()) {
          ways.add(new Variation(build, Map.of(time.id(), time.setting().get().low())));
          ways.add(new Variation(build, Map.of(time.id(), time.setting().get().high())));
        }
      }
    }
    return ways;
  }

  private static void agree(SecondBySecond plain, Explored proof, String name) {
    assertTrue(proof.isWhole(), name);
    Program program = proof.program();
    assertEquals(plain.phases, costs(program, proof.phases()), name);
    assertEquals(plain.taken, costs(program, proof.taken()), name);
    Map<SecondBySecond.Pair, SecondBySecond.Cost> pairs = new HashMap<>();
    proof
        .undecided()
        .forEach(
            (p, way) -> pairs.put(new SecondBySecond.Pair(p.one(), p.other()), cost(program, way)));
    assertEquals(plain.undecided, pairs, name);
    assertEquals(plain.counted, costs(program, proof.counted()), name);
    Map<SecondBySecond.Both, SecondBySecond.Cost> together = new HashMap<>();
    proof
        .together()
        .forEach(
            (both, way) ->
                together.merge(
                    new SecondBySecond.Both(
                        both.apart(), Set.of(both.one(), both.other()), both.phase()),
                    cost(program, way),
                    (one, other) -> one.compareTo(other) < 0 ? one : other));
    assertEquals(plain.together, together, name);
    assertEquals(plain.restless, proof.restless().map(way -> cost(program, way)), name);
    assertEquals(plain.left, new TreeSet<>(proof.left()), name);
    assertEquals(plain.over, new HashSet<>(proof.over()), name);
  }

  private static <K> Map<K, SecondBySecond.Cost> costs(Program program, Map<K, Reach> ways) {
    Map<K, SecondBySecond.Cost> costs = new HashMap<>();
    ways.forEach((key, way) -> costs.put(key, cost(program, way)));
    return costs;
  }

  private static SecondBySecond.Cost cost(Program program, Reach reach) {
    Way way = Way.to(program, reach);
    assertEquals(reach.events(), way.events().size());
    return new SecondBySecond.Cost(reach.events(), (int) way.end());
  }

  @Test
  void runsAgreeStepByStep() {
    LongStream.range(0, SEQUENCES).parallel().forEach(RandomSequenceTest::runsAgree);
  }

  private static void runsAgree(long seed) {
    RandomSequence.Made made = RandomSequence.of(seed);
    List<List<Event>> steps = events(made.sequence(), new Random(~seed));
    for (Variation way : ways(made)) {
      List<String> expected =
          new SecondBySecond(made.sequence(), way.build(), way.set()).run(steps);
      Program program = Program.of(made.sequence(), way.build(), way.set());
      assertEquals(expected, phases(program, steps), "sequence " + seed + " " + way);
    }
  }

  private static List<List<Event>> events(Sequence sequence, Random random) {
    List<List<Event>> steps = new ArrayList<>();
    for (int i = 0; i < STEPS; i++) {
      List<Event> now = new ArrayList<>();
      while (random.nextInt(3) == 0) {
        Input input = sequence.inputs().get(random.nextInt(sequence.inputs().size()));
        now.add(
            new Event(
                input.id(),
                input.isPush()
                    ? Optional.empty()
                    : Optional.of(input.states().get(random.nextInt(input.states().size())).id())));
      }
      steps.add(now);
    }
    return steps;
  }

  /** The phase at the end of each step. */
  private static List<String> phases(Program program, List<List<Event>> steps) {
    Recorder recorder = new Recorder(program);
    List<String> phases = new ArrayList<>();
    try {
      for (int step = 0; step < steps.size(); step++) {
        for (Event event : steps.get(step)) {
          recorder.happen(step, event);
        }
        Timeline line = recorder.upTo(step);
        List<Stay> stays = line.stays();
        phases.add(stays.get(stays.size() - 1).phase());
      }
    } catch (Restless restless) {
      phases.add("restless");
    }
    return phases;
  }
}
