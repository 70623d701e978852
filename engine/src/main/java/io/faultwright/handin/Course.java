package io.faultwright.handin;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The session that was taught.
 *
 * @param session id
 * @param title of the session
 * @param handbook title of the handbook
 * @param maker of the equipment
 * @param language BCP 47 tag
 * @param base address under which the site stands
 * @param date the day it was held
 */
public record Course(
    String session,
    String title,
    String handbook,
    String maker,
    String language,
    Optional<String> base,
    Optional<LocalDate> date) {
  /** From the file of a quiz or of grades, which name these alike. */
  public static Course read(Members file) {
    return new Course(
        file.text("session").orElse(""),
        file.text("title").orElse(""),
        file.text("handbook").orElse(""),
        file.text("maker").orElse(""),
        file.text("language").orElse("en"),
        file.optional("base"),
        file.day("date"));
  }
}
