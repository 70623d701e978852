package io.faultwright.handin;

import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;

/** When something was handed in: a day, with or without a time of day (ISO 8601). */
final class Moments {
  private static final int DAY = "2026-04-14".length();

  private Moments() {}

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
