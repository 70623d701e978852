package io.faultwright.logbook;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.resolve.LogMap;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;

/** Reads the time of a row; the first row begins, unless the map says what does. */
final class RowClock {
  private final LogMap map;
  private final LogLines lines;
  private final StepClock clock;

  /**
   * @throws Unreadable where the map's time zero is no time
   */
  RowClock(LogMap map, LogLines lines, StepClock clock) {
    this.map = map;
    this.lines = lines;
    this.clock = clock;
    map.zero().ifPresent(this::begin);
  }

  private void begin(Scalar zero) {
    String text = zero.text().strip();
    long nanos = nanos(text, 0, text.length());
    if (nanos == TimeText.NONE) {
      String message = "`zero` is written otherwise than the column: found `" + text + "`";
      throw new Unreadable(List.of(Problem.at(zero.place(), message, help())));
    }
    clock.begin(nanos);
  }

  /** The time in nanoseconds; {@link TimeText#NONE} where it is a mistake, which is kept. */
  long read(RowCells cells, int cell, String line) {
    if (cells.isEmpty(cell)) {
      lines.wrong(0, line.length(), "the row has no time in column `" + heading() + "`", help());
      return TimeText.NONE;
    }
    int from = cells.from(cell);
    int to = cells.to(cell);
    boolean quoted = to - from > 1 && line.charAt(from) == '"';
    long nanos = quoted ? nanos(line, from + 1, to - 1) : nanos(line, from, to);
    if (nanos == TimeText.NONE) {
      String found = TypedLog.shown(cells.text(cell));
      lines.wrong(from, to, "`" + found + "` in column `" + heading() + "` is no time", help());
    } else if (!clock.goesOn(nanos)) {
      lines.wrong(
          from,
          to,
          "the time goes back",
          "sort the rows by time; a log over midnight needs dates beside the times");
      return TimeText.NONE;
    } else if (!clock.hasBegun()) {
      clock.begin(nanos);
    }
    return nanos;
  }

  private String heading() {
    return map.time().text().strip();
  }

  private long nanos(String text, int from, int to) {
    return switch (map.form()) {
      case CLOCK -> TimeText.clock(text, from, to);
      case SECONDS -> TimeText.number(text, from, to, TimeText.SECOND);
      case DATE_TIME -> TimeText.dateTime(text, from, to);
    };
  }

  private String help() {
    return switch (map.form()) {
      case CLOCK ->
          "a clock is written `1:28` or `1:02:03`; for others write `as: seconds` or `as: date-time`";
      case SECONDS ->
          "seconds are written `88` or `88.5`; for others write `as: clock` or `as: date-time`";
      case DATE_TIME ->
          "date and time are written `2026-11-30T22:17:27`; for others write `as: clock` or `as: seconds`";
    };
  }
}
