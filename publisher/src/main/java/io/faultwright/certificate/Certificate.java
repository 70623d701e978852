package io.faultwright.certificate;

import io.faultwright.grading.CheckValue;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Says that a person passed the quiz of a session.
 *
 * @param number unlike that of any other, as in {@code 0b1c2d3e-007}
 * @param check 16 hexadecimal digits that follow from all the others and a key of the trainer's
 * @param name of the person
 * @param session what was taught
 * @param date the day it was held
 * @param score as printed; nothing where it is not to be told
 */
public record Certificate(
    String number,
    String check,
    String name,
    Session session,
    LocalDate date,
    Optional<Score> score) {
  private static final int DIGITS = 16;

  /**
   * What was taught.
   *
   * @param id of the session
   * @param title of the session
   * @param handbook title of the handbook
   * @param maker of the equipment
   */
  public record Session(String id, String title, String handbook, String maker) {}

  /**
   * How well it was passed.
   *
   * @param right how many items are right
   * @param of how many there were
   */
  public record Score(int right, int of) {
    /** Whole hundredths, rounded down so that nobody gets more than was reached. */
    public int percent() {
      return 100 * right / of;
    }
  }

  /** A certificate with the check value that a key gives. */
  static Certificate of(
      String number,
      String name,
      Session session,
      LocalDate date,
      Optional<Score> score,
      String key) {
    String text =
        String.join(
            "\n",
            "faultwright certificate 1",
            number,
            name,
            session.id(),
            session.title(),
            session.handbook(),
            session.maker(),
            date.toString(),
            score.map(one -> one.right() + "/" + one.of()).orElse("-"));
    String check = CheckValue.keyed(key, text).substring(0, DIGITS);
    return new Certificate(number, check, name, session, date, score);
  }

  /** What the numbers of all certificates of one quiz begin with. */
  public String series() {
    return number.substring(0, Math.max(0, number.indexOf('-')));
  }

  /** The check value in groups, to be typed. */
  public String spacedCheck() {
    return check.replaceAll("(.{4})(?=.)", "$1 ");
  }
}
