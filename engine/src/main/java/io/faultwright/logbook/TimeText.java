package io.faultwright.logbook;

import io.faultwright.resolve.DateForm;
import io.faultwright.resolve.DateForm.Part;
import java.time.DateTimeException;
import java.time.LocalDate;

/** Reads times, in nanoseconds, out of a stretch of text. What is no time is {@link #NONE}. */
final class TimeText {
  /** No time. */
  static final long NONE = Long.MIN_VALUE;

  static final long SECOND = 1_000_000_000L;

  /** Seconds of a day. */
  static final int DAY = 86_400;

  private static final int SIXTY = 60;
  private static final int HOURS = 24;
  private static final int CENTURY = 2000;
  private static final int MOST_DIGITS = 9;

  private final String text;
  private final int end;
  private int at;

  private TimeText(String text, int from, int end) {
    this.text = text;
    this.at = from;
    this.end = end;
  }

  /** {@code 1:28}, {@code 1:02:03} or {@code 1:28.5}: minutes and seconds, or hours too. */
  static long clock(String text, int from, int to) {
    TimeText read = new TimeText(text, from, to);
    long clock = read.clock();
    return read.at == to ? clock : NONE;
  }

  private long clock() {
    long first = digits(1, MOST_DIGITS);
    if (first < 0 || !take(':')) {
      return NONE;
    }
    long second = digits(2, 2);
    if (second < 0 || second >= SIXTY) {
      return NONE;
    }
    if (!take(':')) {
      return fraction((first * SIXTY + second) * SECOND);
    }
    long third = digits(2, 2);
    return third < 0 || third >= SIXTY
        ? NONE
        : fraction(((first * SIXTY + second) * SIXTY + third) * SECOND);
  }

  /** {@code 88} or {@code 88.5}, as so many of a unit. */
  static long number(String text, int from, int to, long unit) {
    TimeText read = new TimeText(text, from, to);
    long whole = read.digits(1, MOST_DIGITS);
    long number = whole < 0 ? NONE : read.fraction(whole * SECOND);
    return number == NONE || read.at != to ? NONE : scaled(number, unit);
  }

  private static long scaled(long number, long unit) {
    return unit >= SECOND ? number * (unit / SECOND) : number / (SECOND / unit);
  }

  /** Date and time of the day, such as {@code 2026-11-30T22:17:27.5Z}: since the start of 1970. */
  static long dateTime(String text, int from, int to, DateForm dates) {
    TimeText read = new TimeText(text, from, to);
    long moment = read.dateTime(dates);
    return read.at == to ? moment : NONE;
  }

  /** A date, as its midnight: since the start of 1970. */
  static long date(String text, int from, int to, DateForm dates) {
    TimeText read = new TimeText(text, from, to);
    long day = read.day(dates);
    return read.at == to && day != NONE ? day * DAY * SECOND : NONE;
  }

  /** A time of the day, such as {@code 8:01}, {@code 20:01:09.5} or {@code 8:01 PM}. */
  static long ofDay(String text, int from, int to) {
    TimeText read = new TimeText(text, from, to);
    long time = read.ofDay();
    return read.at == to ? time : NONE;
  }

  private long dateTime(DateForm dates) {
    long day = day(dates);
    if (day == NONE || !(take('T') || take(' '))) {
      return NONE;
    }
    long time = ofDay();
    return time == NONE ? NONE : zoned(day * DAY * SECOND + time);
  }

  private long ofDay() {
    long hour = digits(1, 2);
    long minute = take(':') ? digits(2, 2) : NONE;
    long second = take(':') ? digits(2, 2) : 0;
    boolean sound = hour >= 0 && hour < HOURS && minute >= 0 && minute < SIXTY;
    if (!sound || second < 0 || second >= SIXTY) {
      return NONE;
    }
    long rest = fraction((minute * SIXTY + second) * SECOND);
    long full = halfDay(hour);
    return rest == NONE || full == NONE ? NONE : full * SIXTY * SIXTY * SECOND + rest;
  }

  /** The hour, where AM or PM may follow. */
  private long halfDay(long hour) {
    int start = at;
    take(' ');
    boolean morning = letter('A');
    if (!morning && !letter('P')) {
      at = start;
      return hour;
    }
    boolean sound = letter('M') && hour > 0 && hour <= HOURS / 2;
    return sound ? hour % (HOURS / 2) + (morning ? 0 : HOURS / 2) : NONE;
  }

  private boolean letter(char capital) {
    return take(capital) || take(Character.toLowerCase(capital));
  }

  private long day(DateForm dates) {
    long[] parts = new long[Part.values().length];
    for (int number = 0; number < parts.length; number++) {
      Part part = dates.order().get(number);
      if (number > 0 && !take(dates.separator())) {
        return NONE;
      }
      parts[part.ordinal()] = part == Part.YEAR ? year(dates) : digits(1, 2);
    }
    try {
      long year = parts[Part.YEAR.ordinal()];
      return LocalDate.of(
              Math.toIntExact(year),
              Math.toIntExact(parts[Part.MONTH.ordinal()]),
              Math.toIntExact(parts[Part.DAY.ordinal()]))
          .toEpochDay();
    } catch (DateTimeException | ArithmeticException noDay) {
      return NONE;
    }
  }

  private long year(DateForm dates) {
    long year = dates.shortYear() ? digits(2, 2) : digits(4, 4);
    return dates.shortYear() && year >= 0 ? CENTURY + year : year;
  }

  private long zoned(long moment) {
    if (moment == NONE || at == end || take('Z')) {
      return moment;
    }
    int sign = take('+') ? 1 : take('-') ? -1 : 0;
    long hours = digits(2, 2);
    long minutes = take(':') || at < end ? digits(2, 2) : 0;
    boolean sound = sign != 0 && hours >= 0 && minutes >= 0;
    return sound ? moment - sign * (hours * SIXTY + minutes) * SIXTY * SECOND : NONE;
  }

  private boolean take(char wanted) {
    boolean found = at < end && text.charAt(at) == wanted;
    at += found ? 1 : 0;
    return found;
  }

  /** A number of so many digits; below zero where there are fewer or more. */
  private long digits(int least, int most) {
    int start = at;
    long number = 0;
    while (at < end && isDigit() && at - start <= most) {
      number = number * 10 + (text.charAt(at) - '0');
      at++;
    }
    return at - start < least || at - start > most ? NONE : number;
  }

  private boolean isDigit() {
    return text.charAt(at) >= '0' && text.charAt(at) <= '9';
  }

  /** What stands behind a point or a comma, added to whole seconds; finer than nano is dropped. */
  private long fraction(long whole) {
    if (!take('.') && !take(',')) {
      return whole;
    }
    int start = at;
    long unit = SECOND;
    long sum = whole;
    while (at < end && isDigit()) {
      unit /= 10;
      sum += (text.charAt(at) - '0') * unit;
      at++;
    }
    return at == start ? NONE : sum;
  }
}
