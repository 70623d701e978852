package io.faultwright.logbook;

import java.time.DateTimeException;
import java.time.LocalDate;

/** Reads times, in nanoseconds, out of a stretch of text. What is no time is {@link #NONE}. */
final class TimeText {
  /** No time. */
  static final long NONE = Long.MIN_VALUE;

  static final long SECOND = 1_000_000_000L;

  private static final int SIXTY = 60;
  private static final int DAY = 86_400;
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

  /** {@code 2026-11-30T22:17:27.5Z}: since the beginning of 1970. */
  static long dateTime(String text, int from, int to) {
    TimeText read = new TimeText(text, from, to);
    long moment = read.dateTime();
    return read.at == to ? moment : NONE;
  }

  private long dateTime() {
    long day = day();
    if (day == NONE || !(take('T') || take(' '))) {
      return NONE;
    }
    long hour = digits(2, 2);
    long minute = take(':') ? digits(2, 2) : NONE;
    long second = take(':') ? digits(2, 2) : 0;
    boolean sound = hour >= 0 && hour < 24 && minute >= 0 && minute < SIXTY;
    if (!sound || second < 0 || second >= SIXTY) {
      return NONE;
    }
    long seconds = day * DAY + (hour * SIXTY + minute) * SIXTY + second;
    return zoned(fraction(seconds * SECOND));
  }

  private long day() {
    long year = digits(4, 4);
    long month = take('-') ? digits(2, 2) : NONE;
    long day = take('-') ? digits(2, 2) : NONE;
    try {
      return year < 0 || month < 0 || day < 0
          ? NONE
          : LocalDate.of((int) year, (int) month, (int) day).toEpochDay();
    } catch (DateTimeException noDay) {
      return NONE;
    }
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
