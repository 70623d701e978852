package io.faultwright.sheet;

import io.faultwright.syntax.Node.Scalar;

/**
 * A cell that was read from a sheet.
 *
 * @param scalar what stands in it, with its place
 * @param kind what the spreadsheet takes it for
 */
record GridCell(Scalar scalar, Kind kind) {
  /** What a spreadsheet takes a cell for. */
  enum Kind {
    /** Nobody says: a cell of a CSV file. */
    UNTOLD,
    TEXT,
    NUMBER,
    DATE,
    /** A formula whose value was never stored. */
    UNCOMPUTED
  }

  boolean isBlank() {
    return kind != Kind.UNCOMPUTED && scalar.isBlank();
  }

  String text() {
    return scalar.text().strip();
  }

  /** The same cell with another text. */
  GridCell with(String text) {
    return new GridCell(new Scalar(text, true, scalar.place()), kind);
  }
}
