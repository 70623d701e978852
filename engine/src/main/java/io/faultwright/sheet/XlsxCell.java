package io.faultwright.sheet;

import io.faultwright.source.Place;
import io.faultwright.syntax.Node.Scalar;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.Row;

/** A cell of a workbook as text: what a person sees in it, with all its digits. */
final class XlsxCell {
  /**
   * Workbooks hold numbers in binary: 8.2 may be stored as 8.1999999999999993. With 15 digits it
   * reads as it was typed.
   */
  private static final MathContext DIGITS = new MathContext(15, RoundingMode.HALF_EVEN);

  private static final int LONGEST = 100;

  private final Cell cell;
  private final Place place;

  private XlsxCell(Cell cell, Place place) {
    this.cell = cell;
    this.place = place;
  }

  /** The cells of a row from the first column on. */
  static List<GridCell> all(Row row, String file) {
    List<GridCell> cells = new ArrayList<>();
    for (int c = 0; c < row.getCellCount(); c++) {
      Place place = new Place(file, row.getRowNum(), c + 1, 1);
      cells.add(
          row.getOptionalCell(c)
              .map(cell -> new XlsxCell(cell, place).read())
              .orElseGet(() -> cell("", GridCell.Kind.TEXT, place)));
    }
    return cells;
  }

  private static GridCell cell(String text, GridCell.Kind kind, Place place) {
    return new GridCell(new Scalar(text, true, place), kind);
  }

  private GridCell read() {
    String stored = Optional.ofNullable(cell.getRawValue()).orElse("");
    if (cell.getType() == CellType.FORMULA && cell.getFormula() != null && stored.isEmpty()) {
      return cell(cell.getFormula(), GridCell.Kind.UNCOMPUTED, place);
    }
    return number(stored)
        .map(this::number)
        .orElseGet(() -> cell(shown(stored), GridCell.Kind.TEXT, place));
  }

  /** The number in a cell; a formula that gives a number has one too. */
  private Optional<BigDecimal> number(String stored) {
    boolean numeric = cell.getValue() instanceof BigDecimal;
    return numeric
        ? Optional.of(new BigDecimal(stored).round(DIGITS)).filter(XlsxCell::isOrdinary)
        : Optional.empty();
  }

  /** Whether its plain digits are not endlessly many. */
  private static boolean isOrdinary(BigDecimal value) {
    return Math.abs((long) value.precision() - value.scale()) < LONGEST;
  }

  private GridCell number(BigDecimal value) {
    if (isDate()) {
      return cell(date(), GridCell.Kind.DATE, place);
    }
    return format().contains("%")
        ? cell(plain(value.movePointRight(2)) + " %", GridCell.Kind.NUMBER, place)
        : cell(plain(value), GridCell.Kind.NUMBER, place);
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  private boolean isDate() {
    return format().chars().anyMatch(c -> "dmyhs".indexOf(c) >= 0);
  }

  private String date() {
    try {
      return cell.asDate().toLocalDate().toString();
    } catch (RuntimeException beyondTheCalendar) {
      return cell.getRawValue();
    }
  }

  /** The format without texts, colours and escapes, in lower case. */
  private String format() {
    return Optional.ofNullable(cell.getDataFormatString())
        .orElse("")
        .replaceAll("\\[[^\\]]*\\]|\"[^\"]*\"|\\\\.|_.", "")
        .toLowerCase(Locale.ROOT)
        .replace("general", "");
  }

  private String shown(String stored) {
    return cell.getType() == CellType.BOOLEAN ? (stored.equals("1") ? "TRUE" : "FALSE") : stored;
  }
}
