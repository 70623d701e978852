package io.faultwright.resolve;

import io.faultwright.syntax.Node.Scalar;
import java.util.Optional;

/**
 * Where a controller's log tells the time, and how.
 *
 * @param heading of the column of the time
 * @param date heading of the column of the date, where it has one of its own
 * @param dates how dates are written
 * @param overMidnight whether a clock that begins again has come to the next day
 * @param zero the time at which the sequence begins; absent: that of the first row
 */
public record LogTime(
    Scalar heading,
    Optional<Scalar> date,
    Form form,
    DateForm dates,
    boolean overMidnight,
    Optional<Scalar> zero) {
  /** How a time is written. */
  public enum Form {
    /** Minutes and seconds, or hours too; beside a date, a time of the day. */
    CLOCK,
    /** A number of seconds. */
    SECONDS,
    /** Date and time of the day in one cell. */
    DATE_TIME
  }
}
