package io.faultwright.measure;

import io.faultwright.operation.Machine;
import io.faultwright.operation.Program;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes logs of a heating machine, line by line: typed, noted with what was seen, as a table. */
final class HeatingLogs {
  private final Program program;
  private final BufferedWriter out;
  private final boolean table;
  private final boolean seen;
  private final long lines;
  private final String[] states = {"0", "0", "0"};
  private long written;

  private HeatingLogs(
      Program program, BufferedWriter out, boolean table, boolean seen, long lines) {
    this.program = program;
    this.out = out;
    this.table = table;
    this.seen = seen;
    this.lines = lines;
  }

  /** Events alone, typed. */
  static void events(Program program, Path file, long lines) throws IOException {
    write(program, file, false, false, lines);
  }

  /** Events and every phase, typed. */
  static void noted(Program program, Path file, long lines) throws IOException {
    write(program, file, false, true, lines);
  }

  /** A table with a row for each event and each phase, and columns for inputs, outputs, display. */
  static void table(Program program, Path file, long lines) throws IOException {
    write(program, file, true, true, lines);
  }

  private static void write(Program program, Path file, boolean table, boolean seen, long lines)
      throws IOException {
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      new HeatingLogs(program, out, table, seen, lines).write();
    }
  }

  private void write() throws IOException {
    if (table) {
      out.write("Time,Call,Switch,Reset,Heater,Pump,Display\n");
    }
    HeatingEvents events = new HeatingEvents();
    int[] phase = new int[1];
    Machine machine = new Machine(program, (step, next, reason) -> phase(phase, step, next));
    while (written < lines) {
      events.next();
      machine.passTo(events.step);
      event(phase[0], events);
      machine.happen(events.step, events.input, events.state);
    }
  }

  private void event(int phase, HeatingEvents event) throws IOException {
    if (!table) {
      line(clock(event.step) + " " + word(event));
      return;
    }
    states[event.input] = event.state == 0 ? "0" : "1";
    row(event.step, phase);
    states[HeatingEvents.RESET] = "0";
  }

  private static String word(HeatingEvents event) {
    return switch (event.input) {
      case HeatingEvents.CALL -> event.state == 1 ? "call becomes made" : "call becomes none";
      case HeatingEvents.SWITCH ->
          event.state == 1 ? "release-switch opens" : "release-switch closes";
      default -> "reset-button";
    };
  }

  private void phase(int[] phase, long step, int next) {
    phase[0] = next;
    if (!seen) {
      return;
    }
    try {
      if (table) {
        row(step, next);
      } else {
        line(clock(step) + " phase " + program.phase(next).id());
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private void row(long step, int phase) throws IOException {
    boolean heater = phase == HeatingByHand.HEATING || phase == HeatingByHand.RELEASING;
    boolean pump = phase == HeatingByHand.DRAINING;
    line(
        clock(step)
            + ","
            + String.join(",", states)
            + (heater ? ",1" : ",0")
            + (pump ? ",1," : ",0,")
            + program.phase(phase).display().orElseThrow());
  }

  private void line(String text) throws IOException {
    if (written < lines) {
      out.write(text);
      out.write('\n');
      written++;
    }
  }

  private static String clock(long step) {
    return step / 3600 + ":" + two(step / 60 % 60) + ":" + two(step % 60);
  }

  private static String two(long number) {
    return number < 10 ? "0" + number : Long.toString(number);
  }
}
