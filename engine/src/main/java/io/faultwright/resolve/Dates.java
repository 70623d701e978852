package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.syntax.Node.Scalar;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/** Reads days of the calendar (ISO 8601). */
final class Dates {
  private Dates() {}

  /** The day that is written; reports a text that is none. */
  static Optional<LocalDate> read(Scalar written, Problems problems) {
    try {
      return Optional.of(LocalDate.parse(written.text().strip()));
    } catch (DateTimeException wrong) {
      problems.add(
          written.place(),
          Words.quoted(written.text()) + " is not a date",
          "write year, month and day as in `2026-03-02`");
      return Optional.empty();
    }
  }
}
