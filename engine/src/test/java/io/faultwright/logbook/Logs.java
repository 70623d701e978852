package io.faultwright.logbook;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.operation.HeatingCycle;
import io.faultwright.operation.Program;
import io.faultwright.resolve.LogMap;
import io.faultwright.source.SourceFile;
import java.io.BufferedReader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Logs of the heating cycle for tests. */
public final class Logs {
  /** Columns of a controller that writes a column for each signal. */
  public static final String WIDE =
      """
      time: { column: Time, as: date-time }
      columns:
        DI1: { is: call, words: { 0: none, 1: made } }
        DI2: { is: release-switch, words: { 0: closed, 1: open, "?": skip } }
        RST: { is: reset-button, words: { 0: released, 1: pressed } }
        DO1: { is: heater, words: { 0: off, 1: on } }
        Disp: display
      ignore: Alarm
      """;

  /** Columns of a controller that writes a row for each change. */
  public static final String LONG =
      """
      time: { column: When, zero: "8:00:00" }
      signal: Tag
      value: Val
      columns:
        DI1: { is: call, words: { 0: none, 1: made } }
        DI2: { is: release-switch, words: { 0: closed, 1: open } }
        DO1: { is: heater, words: { 0: off, 1: on } }
        MSG: { is: event, words: { RESET: reset-button }, unknown: skip }
        ST: phase
      ignore: [T1]
      """;

  private Logs() {}

  static LogInput typed(String... lines) {
    return LogFile.open("a.log", in(lines), Optional.empty(), HeatingCycle.on("2.9"));
  }

  static LogInput table(String map, String... lines) {
    return LogFile.open("a.csv", in(lines), Optional.of(map(map)), HeatingCycle.on("2.9"));
  }

  /** A map of columns. */
  public static LogMap map(String yaml) {
    return LogMap.read(SourceFile.of("map.yaml", yaml), HeatingCycle.SEQUENCE);
  }

  private static BufferedReader in(String... lines) {
    return new BufferedReader(new StringReader(String.join("\n", lines)));
  }

  /** Follows a log on software 2.9, where the longest heating is 3 min. */
  static Followed follow(LogInput log, long within) {
    return follow(log, HeatingCycle.on("2.9"), within, 0);
  }

  /** Follows a log, up to a step at least. */
  public static Followed follow(LogInput log, Program program, long within, long until) {
    Follower follower = new Follower(program, log.holds(), within, 20);
    all(log).forEach(follower::accept);
    return follower.end(until);
  }

  static List<Entry> all(LogInput log) {
    List<Entry> entries = new ArrayList<>();
    Optional<Entry> next = log.next();
    while (next.isPresent()) {
      entries.add(next.get());
      next = log.next();
    }
    return entries;
  }

  /** What is wrong with a log: place, message, help. */
  static List<String> wrong(LogInput log) {
    try {
      all(log);
      return List.of();
    } catch (Unreadable unreadable) {
      return said(unreadable);
    }
  }

  static List<String> said(Unreadable unreadable) {
    return unreadable.problems().stream()
        .map(one -> one.places() + " " + one.message() + " | " + one.help())
        .toList();
  }
}
