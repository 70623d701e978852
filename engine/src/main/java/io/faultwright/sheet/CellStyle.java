package io.faultwright.sheet;

import io.faultwright.quantity.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * How a trainer writes the numbers of a column, so that new ones look like those beside them.
 *
 * @param decimals the fewest digits behind the full stop that a number of the column has
 * @param unit what stands behind its first number
 */
record CellStyle(int decimals, Optional<Unit> unit) {
  private static final String NUMBER = "[+-]?\\d+(\\.\\d+)?";

  static CellStyle of(SheetColumn column, List<TableRow> rows) {
    List<String> texts =
        rows.stream().map(row -> row.text(column)).filter(text -> !text.isEmpty()).toList();
    int decimals = texts.stream().mapToInt(CellStyle::decimals).min().orElse(0);
    Optional<Unit> unit =
        column
            .unit()
            .filter(
                one -> texts.stream().findFirst().filter(t -> t.endsWith(" " + one)).isPresent());
    return new CellStyle(decimals, unit);
  }

  private static int decimals(String text) {
    String number = text.split(" ", 2)[0];
    return number.matches(NUMBER) ? Math.max(0, new BigDecimal(number).scale()) : 0;
  }

  /** A text of the column in this style; anything but bare numbers stays as it is. */
  String apply(String text) {
    String padded = text.matches(NUMBER) ? padded(new BigDecimal(text)) : text;
    boolean bare = text.matches(NUMBER + "( to " + NUMBER + ")?");
    return padded + unit.filter(one -> bare).map(one -> " " + one).orElse("");
  }

  private String padded(BigDecimal number) {
    return number.setScale(Math.max(number.scale(), decimals)).toPlainString();
  }
}
