package io.faultwright.measure;

import io.faultwright.logbook.Followed;
import io.faultwright.logbook.Follower;
import io.faultwright.logbook.LogFile;
import io.faultwright.logbook.LogInput;
import io.faultwright.operation.Machine;
import io.faultwright.operation.Program;
import io.faultwright.pipeline.Following;
import io.faultwright.resolve.LogMap;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.FolderReader;
import java.io.BufferedReader;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * How fast events stream through a sequence of operation, beside plain Java of the same sequence.
 * Arguments: the folder of the heating cycle, how many events, how many of them for Drools (0 for
 * none), a folder for the logs, which are written first and deleted afterwards.
 */
public final class SequencePace {
  private static final long WARM = 200_000;
  private static final String MAP =
      """
      time: Time
      columns:
        Call: { is: call, words: { 0: none, 1: made } }
        Switch: { is: release-switch, words: { 0: closed, 1: open } }
        Reset: { is: reset-button, words: { 0: released, 1: pressed } }
        Heater: { is: heater, words: { 0: off, 1: on } }
        Pump: { is: pump, words: { 0: off, 1: on } }
        Display: display
      """;

  private final Program program;
  private double yardstick;

  private SequencePace(Program program) {
    this.program = program;
  }

  /** What came of a run: phases and stops. */
  private record Came(long phases, long stops) {}

  private interface Run {
    Came of(long events) throws IOException;
  }

  private interface Writing {
    void write(Program program, Path file, long lines) throws IOException;
  }

  public static void main(String[] args) throws IOException {
    Following following = new Following(FolderReader.read(Path.of(args[0])));
    Program program = following.program("heating-cycle", "MO-1", Optional.of("2.10"), Map.of());
    new SequencePace(program)
        .all(Long.parseLong(args[1]), Long.parseLong(args[2]), Path.of(args[3]));
  }

  private void all(long events, long drools, Path folder) throws IOException {
    System.out.printf(
        Locale.ROOT, "heap at most %d MB%n", Runtime.getRuntime().maxMemory() / 1_000_000);
    Came byHand = timed("plain Java of the same sequence", events, SequencePace::byHand);
    agree(byHand, timed("the machine alone", events, this::machine));
    Came typed =
        file(folder.resolve("typed.log"), "a typed log, events alone", events, HeatingLogs::events);
    agree(byHand, typed);
    file(folder.resolve("noted.log"), "a typed log, compared", events, HeatingLogs::noted);
    file(folder.resolve("table.csv"), "a table of 7 columns, compared", events, HeatingLogs::table);
    if (drools > 0) {
      agree(
          new Came(byHand(drools).phases(), byHand(drools).stops()),
          timed("rules in Drools with a pseudo-clock", drools, SequencePace::drools));
    }
  }

  private static void agree(Came one, Came other) {
    if (!one.equals(other)) {
      throw new IllegalStateException(one + " is not " + other);
    }
  }

  private Came file(Path file, String name, long events, Writing writing) throws IOException {
    writing.write(program, file, events);
    try {
      return timed(name, events, most -> follow(file, most));
    } finally {
      Files.delete(file);
    }
  }

  private static Came byHand(long events) {
    HeatingEvents source = new HeatingEvents();
    HeatingByHand machine = new HeatingByHand();
    for (long i = 0; i < events; i++) {
      source.next();
      machine.happen(source.step, source.input, source.state);
    }
    machine.passTo(source.step + 1);
    return new Came(machine.phases, machine.stops);
  }

  private Came machine(long events) {
    long[] came = new long[2];
    Machine machine =
        new Machine(
            program,
            (step, phase, reason) -> {
              came[0]++;
              came[1] += program.phase(phase).stop() ? 1 : 0;
            });
    HeatingEvents source = new HeatingEvents();
    for (long i = 0; i < events; i++) {
      source.next();
      machine.happen(source.step, source.input, source.state);
    }
    machine.settle();
    return new Came(came[0], came[1]);
  }

  private Came follow(Path file, long most) throws IOException {
    Optional<LogMap> map =
        file.toString().endsWith(".csv")
            ? Optional.of(LogMap.read(SourceFile.of("map", MAP), program.sequence()))
            : Optional.empty();
    try (BufferedReader in = Files.newBufferedReader(file)) {
      LogInput input = LogFile.open(file.getFileName().toString(), in, map, program);
      Follower follower = new Follower(program, input.holds(), 1, 10);
      for (long i = 0; most == WARM && i < most; i++) {
        input.next().ifPresent(follower::accept);
      }
      Followed followed =
          most == WARM ? follower.end(0) : Following.follow(follower, input, program, 0, () -> {});
      if (!followed.agrees()) {
        throw new IllegalStateException("log and model part: " + followed.partings());
      }
      return new Came(followed.phases().all(), followed.stops().all());
    }
  }

  private static Came drools(long events) {
    HeatingRules rules = new HeatingRules();
    HeatingEvents source = new HeatingEvents();
    for (long i = 0; i < events; i++) {
      source.next();
      rules.happen(source.step, source.input, source.state);
    }
    rules.end();
    return new Came(rules.phases(), rules.stops());
  }

  private Came timed(String name, long events, Run run) throws IOException {
    run.of(Math.min(events, WARM));
    System.gc();
    pools().forEach(MemoryPoolMXBean::resetPeakUsage);
    long begin = System.nanoTime();
    Came came = run.of(events);
    double seconds = (System.nanoTime() - begin) / 1e9;
    long peak = pools().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
    double rate = events / seconds;
    yardstick = yardstick == 0 ? rate : yardstick;
    System.out.printf(
        Locale.ROOT,
        "%-36s %,12d events %8.2f s %,13.0f events/s  1 : %-8.1f heap %d MB; %,d phases%n",
        name,
        events,
        seconds,
        rate,
        yardstick / rate,
        peak / 1_000_000,
        came.phases());
    return came;
  }

  private static java.util.stream.Stream<MemoryPoolMXBean> pools() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP);
  }
}
