package io.faultwright.handin;

import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** When something was handed in: a day, with or without a time of day (ISO 8601). */
final class Moments {
  private static final int DAY = "2026-04-14".length();
  private static final Pattern DOTTED =
      Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})(?: (\\d{1,2})(:\\d{2})(?::\\d{2})?)?");

  private Moments() {}

  /** As ISO 8601 writes it, where a spreadsheet wrote day, month and year with dots. */
  static String iso(String written) {
    Matcher dotted = DOTTED.matcher(written);
    if (!dotted.matches()) {
      return written;
    }
    String day = dotted.group(3) + "-" + two(dotted.group(2)) + "-" + two(dotted.group(1));
    return dotted.group(4) == null ? day : day + "T" + two(dotted.group(4)) + dotted.group(5);
  }

  private static String two(String digits) {
    return digits.length() == 1 ? "0" + digits : digits;
  }

  /** Reports a text that is none. */
  static void require(String written, Place place, Problems problems) {
    if (!written.isEmpty() && day(written).isEmpty()) {
      problems.add(
          place,
          "`" + written + "` is not a date with a time",
          "expected as in `2026-04-14T10:32` or `2026-04-14`");
    }
  }

  /** The day; nothing where the text is no moment. */
  static Optional<LocalDate> day(String written) {
    try {
      return Optional.of(
          written.length() == DAY
              ? LocalDate.parse(written)
              : LocalDateTime.parse(written.replace(' ', 'T')).toLocalDate());
    } catch (DateTimeException wrong) {
      return Optional.empty();
    }
  }
}
