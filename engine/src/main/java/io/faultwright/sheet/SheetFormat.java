package io.faultwright.sheet;

import java.util.Locale;
import java.util.Optional;

/** The kinds of files that spreadsheet programs read and write. */
public enum SheetFormat {
  CSV,
  XLSX;

  /** The kind that the ending of a file name says. */
  public static Optional<SheetFormat> of(String fileName) {
    String lower = fileName.toLowerCase(Locale.ROOT);
    if (lower.endsWith(".csv")) {
      return Optional.of(CSV);
    }
    return lower.endsWith(".xlsx") ? Optional.of(XLSX) : Optional.empty();
  }
}
