package io.faultwright.logbook;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.resolve.LogTime;
import io.faultwright.resolve.LogTime.Form;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Optional;

/** Reads the time of a row; the first row begins, unless the map says what does. */
final class RowClock {
  private static final long DAY = TimeText.DAY * TimeText.SECOND;

  /** A clock that goes back by less has not come to the next day: rows are out of order. */
  private static final long LEAST_NIGHT = DAY / 24;

  /** Reads nanoseconds out of a stretch of text. */
  private interface Reader {
    long nanos(String text, int from, int to);
  }

  /** A column that tells the time, or the date beside it. */
  private record Column(String heading, String what, Reader reader, String help) {}

  private final LogTime map;
  private final LogLines lines;
  private final StepClock clock;
  private final Column times;
  private final Optional<Column> dates;
  private long zero = TimeText.NONE;
  private long midnight;
  private boolean compared;
  private long last = TimeText.NONE;

  /**
   * @throws Unreadable where the map's time zero is no time
   */
  RowClock(LogTime map, LogLines lines, StepClock clock) {
    this.map = map;
    this.lines = lines;
    this.clock = clock;
    this.times = new Column(map.heading().text().strip(), "time", reader(map), help(map));
    this.dates =
        map.date()
            .map(
                heading ->
                    new Column(
                        heading.text().strip(),
                        "date",
                        (text, from, to) -> TimeText.date(text, from, to, map.dates()),
                        "dates are written " + map.dates().example() + otherDates()));
    map.zero().ifPresent(this::begin);
  }

  private static Reader reader(LogTime map) {
    return switch (map.form()) {
      case CLOCK -> map.date().isPresent() ? TimeText::ofDay : RowClock::clock;
      case SECONDS -> (text, from, to) -> TimeText.number(text, from, to, TimeText.SECOND);
      case DATE_TIME -> (text, from, to) -> TimeText.dateTime(text, from, to, map.dates());
    };
  }

  private static long clock(String text, int from, int to) {
    long clock = TimeText.clock(text, from, to);
    return clock == TimeText.NONE ? TimeText.ofDay(text, from, to) : clock;
  }

  private static String help(LogTime map) {
    return switch (map.form()) {
      case CLOCK ->
          map.date().isPresent()
              ? "a time of the day is written `8:01`, `20:01:09` or `8:01 PM`"
              : "a clock is written `1:28` or `1:02:03`; for others write `as: seconds` or"
                  + " `as: date-time`";
      case SECONDS ->
          "seconds are written `88` or `88.5`; for others write `as: clock` or `as: date-time`";
      case DATE_TIME ->
          "date and time are written `" + map.dates().example() + " 22:17:27`" + otherDates();
    };
  }

  private static String otherDates() {
    return "; for others write `dates: DD.MM.YYYY` or the like";
  }

  private void begin(Scalar written) {
    String text = written.text().strip();
    int end = text.length();
    long nanos =
        dates.isPresent()
            ? TimeText.dateTime(text, 0, end, map.dates())
            : times.reader().nanos(text, 0, end);
    if (nanos == TimeText.NONE) {
      String found = "`zero` is written otherwise than the column: found `" + text + "`";
      String help = dates.isPresent() ? "write a date, a space and a time" : times.help();
      throw new Unreadable(List.of(Problem.at(written.place(), found, help)));
    }
    clock.begin(nanos);
    zero = nanos;
  }

  /** The time in nanoseconds; {@link TimeText#NONE} where it is a mistake, which is kept. */
  long read(RowCells cells, LogColumns columns, String line) {
    long time = read(cells, columns.time(), line, times);
    if (time == TimeText.NONE || !isLikeZero(cells, columns.time())) {
      return TimeText.NONE;
    }
    long day =
        dates.isPresent()
            ? read(cells, columns.date(), line, dates.get())
            : map.overMidnight() ? midnight(time) : 0;
    return day == TimeText.NONE ? day : inOrder(day + time, cells, columns.time());
  }

  private long read(RowCells cells, int cell, String line, Column column) {
    if (cells.isEmpty(cell)) {
      String found = "the row has no " + column.what() + " in column `" + column.heading() + "`";
      lines.wrong(0, line.length(), found, column.help());
      return TimeText.NONE;
    }
    int from = cells.from(cell);
    int to = cells.to(cell);
    int quote = to - from > 1 && line.charAt(from) == '"' ? 1 : 0;
    long nanos = column.reader().nanos(line, from + quote, to - quote);
    if (nanos == TimeText.NONE) {
      String found = "`" + TypedLog.shown(cells.text(cell)) + "` in column `" + column.heading();
      lines.wrong(from, to, found + "` is no " + column.what(), column.help());
    }
    return nanos;
  }

  /** Whether zero is no `8:00`, eight minutes, where the first row has `8:00:05` or `8:00 AM`. */
  private boolean isLikeZero(RowCells cells, int cell) {
    if (compared || map.zero().isEmpty() || map.form() != Form.CLOCK || dates.isPresent()) {
      return true;
    }
    compared = true;
    String row = cells.text(cell).strip();
    String begin = map.zero().get().text().strip();
    boolean shorter = zero != 0 && begin.split(":").length < row.split(":").length;
    if (!shorter && isHalfDay(begin) == isHalfDay(row)) {
      return true;
    }
    lines.wrong(
        cells.from(cell),
        cells.to(cell),
        "`zero` is written `" + begin + "`, and the column `" + TypedLog.shown(row) + "`",
        "write `zero` in the map as the column is, with seconds and AM or PM where it has them");
    return false;
  }

  private static boolean isHalfDay(String text) {
    return text.endsWith("M") || text.endsWith("m");
  }

  /** The midnight before a clock without dates: the next one where the clock began again. */
  private long midnight(long time) {
    if (last == TimeText.NONE) {
      midnight = nearest(time);
    } else if (time < last - LEAST_NIGHT) {
      midnight += DAY;
    }
    last = time;
    return midnight;
  }

  /** The midnight that brings the first row nearest to time zero. */
  private long nearest(long time) {
    long after = zero == TimeText.NONE ? 0 : time - zero;
    return after > DAY / 2 ? -DAY : after < -DAY / 2 ? DAY : 0;
  }

  private long inOrder(long nanos, RowCells cells, int cell) {
    if (!clock.goesOn(nanos)) {
      lines.wrong(cells.from(cell), cells.to(cell), "the time goes back", sorted());
      return TimeText.NONE;
    }
    if (!clock.hasBegun()) {
      clock.begin(nanos);
    }
    return nanos;
  }

  private String sorted() {
    boolean mayGoOver = map.form() == Form.CLOCK && dates.isEmpty() && !map.overMidnight();
    return "sort the rows by time"
        + (mayGoOver ? "; for a log over midnight write `over-midnight: yes` in the map" : "");
  }
}
