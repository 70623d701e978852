package io.faultwright.logbook;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.operation.Program;
import io.faultwright.resolve.LogWords;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node.Scalar;
import java.io.BufferedReader;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A log as a person types it, an entry on each line: a time, and what happened or was seen. Empty
 * lines say nothing, nor does what stands behind a {@code #}.
 */
public final class TypedLog implements LogInput {
  private static final Map<String, Long> UNITS =
      Map.of(
          "ms",
          TimeText.SECOND / 1000,
          "s",
          TimeText.SECOND,
          "min",
          60 * TimeText.SECOND,
          "h",
          3600 * TimeText.SECOND);
  private static final int MOST_KEPT = 10_000;
  private static final String HELP =
      "write a time such as `1:28`, `1:02:03` or `88 s`, then what happened or was seen";

  private final LogLines lines;
  private final StepClock clock;
  private final Signals signals;
  private final Map<String, Said> known = new HashMap<>();
  private final Program program;
  private long time;
  private int rest;

  /**
   * Begins to read a log.
   *
   * @param path what to call it in messages
   */
  public TypedLog(String path, BufferedReader in, Program program) {
    this.lines = new LogLines(path, in);
    this.clock = new StepClock(program.sequence());
    this.signals = new Signals(program);
    this.program = program;
    clock.begin(0);
  }

  @Override
  public List<Problem> notes() {
    return List.of();
  }

  @Override
  public boolean holds() {
    return false;
  }

  @Override
  public Optional<Entry> next() {
    Optional<String> line = lines.next();
    while (line.isPresent()) {
      Optional<Entry> entry = entry(line.get());
      if (entry.isPresent()) {
        return entry;
      }
      line = lines.next();
    }
    return Optional.empty();
  }

  private Optional<Entry> entry(String line) {
    int from = skip(line, 0, line.length());
    int to = end(line, from);
    if (from == to || !readTime(line, from, to)) {
      return Optional.empty();
    }
    if (rest == to) {
      lines.wrong(from, to, "a time with nothing behind it", "write what happened, or `end`");
      return Optional.empty();
    }
    return said(line, to).map(said -> entry(said, line, to));
  }

  /** Where the text ends: before a comment, without blanks. */
  private static int end(String line, int from) {
    int to = from;
    while (to < line.length()
        && !(line.charAt(to) == '#' && (to == from || isBlank(line.charAt(to - 1))))) {
      to++;
    }
    while (to > from && isBlank(line.charAt(to - 1))) {
      to--;
    }
    return to;
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t';
  }

  private static int skip(String line, int from, int to) {
    int at = from;
    while (at < to && isBlank(line.charAt(at))) {
      at++;
    }
    return at;
  }

  private static int word(String line, int from, int to) {
    int at = from;
    while (at < to && !isBlank(line.charAt(at))) {
      at++;
    }
    return at;
  }

  private boolean readTime(String line, int from, int to) {
    int end = word(line, from, to);
    time = TimeText.clock(line, from, end);
    if (time == TimeText.NONE) {
      end = readNumber(line, from, to);
    }
    if (time == TimeText.NONE) {
      String found = line.substring(from, word(line, from, to));
      lines.wrong(from, word(line, from, to), "`" + shown(found) + "` is no time", HELP);
      return false;
    }
    rest = skip(line, end, to);
    if (!clock.goesOn(time)) {
      lines.wrong(from, end, "the time goes back", "put the entries in the order of their times");
      return false;
    }
    return true;
  }

  /** A number with its unit right behind it or after a blank. */
  private int readNumber(String line, int from, int to) {
    int digits = from;
    while (digits < to && (Character.isDigit(line.charAt(digits)) || line.charAt(digits) == '.')) {
      digits++;
    }
    int unit = skip(line, digits, to);
    int end = word(line, unit, to);
    long scale = UNITS.getOrDefault(line.substring(unit, end), 0L);
    time = scale == 0 ? TimeText.NONE : TimeText.number(line, from, digits, scale);
    return end;
  }

  static String shown(String text) {
    return text.length() > 40 ? text.substring(0, 40) + "…" : text.replace('`', '\'');
  }

  /** What the rest of a line says; empty where that is a mistake. */
  private Optional<Said> said(String line, int to) {
    String text = line.substring(rest, to);
    Optional<Said> before = Optional.ofNullable(known.get(text));
    return before.isPresent() ? before : read(text, lines.place(rest, to));
  }

  private Optional<Said> read(String text, Place place) {
    Problems found = new Problems();
    Optional<Said> said =
        new LogWords(program.sequence(), found)
            .entry(new Scalar(text, false, place))
            .map(signals::said);
    lines.keep(found);
    said.filter(one -> known.size() < MOST_KEPT).ifPresent(one -> known.put(text, one));
    return said;
  }

  private Entry entry(Said said, String line, int to) {
    return new Entry(
        lines.path(),
        clock.step(time),
        said,
        lines.number(),
        line.codePointCount(0, rest) + 1,
        to - rest);
  }
}
