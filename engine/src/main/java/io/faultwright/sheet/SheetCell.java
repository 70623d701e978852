package io.faultwright.sheet;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A cell that is written to a sheet.
 *
 * @param text what it says; empty for an empty cell
 * @param number the same as a number, where a spreadsheet holds it exactly
 */
record SheetCell(String text, Optional<BigDecimal> number) {
  /** Digits that every spreadsheet program keeps of a number. */
  private static final int KEPT_DIGITS = 15;

  static final SheetCell EMPTY = new SheetCell("", Optional.empty());

  /** A cell of a row, in the unit of its column. */
  static SheetCell of(SheetColumn column, TableRow row) {
    String text = row.text(column);
    return column
        .unit()
        .flatMap(unit -> Amounts.of(text, unit))
        .map(amounts -> of(column, text, amounts))
        .orElseGet(() -> new SheetCell(text, Optional.empty()));
  }

  private static SheetCell of(SheetColumn column, String written, Amounts amounts) {
    Optional<BigDecimal> number = amounts.number().filter(one -> one.precision() <= KEPT_DIGITS);
    Optional<String> plain =
        amounts.values().size() == 1 ? number.map(BigDecimal::toPlainString) : amounts.plain();
    return new SheetCell(plain.orElseGet(() -> withUnit(column, written)), number);
  }

  /** A text that a spreadsheet leaves alone. */
  private static String withUnit(SheetColumn column, String written) {
    boolean bare = written.matches(".*\\d");
    return bare ? written + column.unit().map(unit -> " " + unit).orElse("") : written;
  }
}
