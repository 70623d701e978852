package io.faultwright.sheet;

import io.faultwright.diagnostic.Problems;
import io.faultwright.quantity.Unit;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the rows of a table from a sheet, as YAML would say them. */
final class GridRows {
  private static final String BARE_NUMBER = "[+-]?\\d+([.,]\\d+)*";
  private static final String WHOLE_NUMBER = "\\d+";

  private final Grid grid;
  private final Problems problems;
  private final List<Headings.Found> headings;
  private final boolean commas;
  private final boolean sound;

  private GridRows(Grid grid, List<SheetColumn> columns, Problems problems) {
    int before = problems.count();
    this.grid = grid;
    this.problems = problems;
    this.headings = Headings.of(grid.rows().get(0), columns, problems);
    this.commas = hasDecimalCommas();
    this.sound = problems.count() == before;
  }

  /**
   * The rows of a sheet; what is wrong goes to the problems. A row that may have lost a cell to a
   * problem stands {@link TableRow#NOWHERE}, so that nobody complains of what is missing in it.
   */
  static List<TableRow> of(Grid grid, List<SheetColumn> columns, Problems problems) {
    return new GridRows(grid, columns, problems).rows();
  }

  private boolean hasDecimalCommas() {
    return grid.separator()
        .map(separator -> DecimalMark.isComma(numbers(), separator, problems))
        .orElse(false);
  }

  private List<GridCell> numbers() {
    return body().stream()
        .flatMap(
            row ->
                headings.stream()
                    .filter(heading -> heading.unit().isPresent())
                    .flatMap(heading -> cell(row, heading).stream()))
        .toList();
  }

  private List<List<GridCell>> body() {
    return grid.rows().subList(1, grid.rows().size());
  }

  private static Optional<GridCell> cell(List<GridCell> row, Headings.Found heading) {
    return Optional.of(heading.index())
        .filter(index -> index < row.size())
        .map(row::get)
        .filter(cell -> !cell.isBlank());
  }

  private List<TableRow> rows() {
    List<TableRow> rows = new ArrayList<>();
    for (List<GridCell> row : body()) {
      int before = problems.count();
      checkHeadingAbove(row);
      Map<String, Node> cells = cells(row);
      boolean whole = sound && problems.count() == before;
      rows.add(new TableRow(cells, whole ? place(row) : TableRow.NOWHERE));
    }
    return rows;
  }

  private void checkHeadingAbove(List<GridCell> row) {
    List<GridCell> top = grid.rows().get(0);
    for (int i = 0; i < row.size(); i++) {
      boolean headed = i < top.size() && !top.get(i).isBlank();
      if (!headed && !row.get(i).isBlank()) {
        problems.add(
            row.get(i).scalar().place(),
            "`" + row.get(i).text() + "` stands in a column without a heading",
            "write the heading, or empty the cell; a comma inside a cell needs quotes");
      }
    }
  }

  private Map<String, Node> cells(List<GridCell> row) {
    Map<String, Node> cells = new LinkedHashMap<>();
    for (Headings.Found heading : headings) {
      cell(row, heading)
          .flatMap(cell -> node(cell, heading))
          .ifPresent(node -> cells.put(heading.column().id(), node));
    }
    return cells;
  }

  private static Place place(List<GridCell> row) {
    GridCell first = row.stream().filter(cell -> !cell.isBlank()).findFirst().orElse(row.get(0));
    return first.scalar().place();
  }

  private Optional<Node> node(GridCell cell, Headings.Found heading) {
    return switch (cell.kind()) {
      case DATE ->
          refuse(
              cell,
              "expected " + expected(heading) + ", found the date " + cell.text(),
              "programs of some countries take `8.2` for a day; format the cell as a number or a"
                  + " text, and type it again");
      case UNCOMPUTED ->
          refuse(
              cell,
              "the formula `=" + cell.text() + "` has no stored value",
              "open the file with a spreadsheet program and save it, or type the value");
      default -> heading.unit().isPresent() ? number(cell, heading) : equipment(cell, heading);
    };
  }

  private static String expected(Headings.Found heading) {
    return heading.unit().isPresent() ? "a number" : "a text";
  }

  private Optional<Node> equipment(GridCell cell, Headings.Found heading) {
    boolean number = cell.kind() == GridCell.Kind.NUMBER;
    if (number && (heading.column().isSoftware() || !cell.text().matches(WHOLE_NUMBER))) {
      return refuse(
          cell,
          "expected a text, found the number " + cell.text(),
          "format the column as text and type it again: as a number, the version 2.10 is 2.1");
    }
    return Optional.of(CellText.equipment(cell.scalar()));
  }

  private Optional<Node> number(GridCell cell, Headings.Found heading) {
    if (cell.kind() == GridCell.Kind.TEXT && cell.text().matches(BARE_NUMBER)) {
      return refuse(
          cell,
          "expected a number, found the text `" + cell.text() + "`",
          "format the cell as a number, and type it again");
    }
    String text = commas ? cell.text().replaceAll("(\\d),(\\d)", "$1.$2") : cell.text();
    return Optional.of(inUnit(cell.with(text).scalar(), heading));
  }

  /** A number in the unit of the sheet, said in the unit of the table where that is exact. */
  private static Node inUnit(Scalar cell, Headings.Found heading) {
    Unit from = heading.unit().orElseThrow();
    Unit to = heading.column().unit().orElseThrow();
    if (cell.text().endsWith(" " + to)) {
      String bare = cell.text().substring(0, cell.text().length() - to.symbol().length());
      return new Scalar(bare.strip(), true, cell.place());
    }
    boolean bare = cell.text().matches(".*\\d");
    return from.equals(to) || !bare
        ? cell
        : new Scalar(converted(cell.text(), from, to), true, cell.place());
  }

  private static String converted(String text, Unit from, Unit to) {
    return Amounts.of(text, from)
        .map(amounts -> amounts.convert(from, to).plain().orElse(text + " " + from))
        .orElse(text);
  }

  private Optional<Node> refuse(GridCell cell, String message, String help) {
    problems.add(cell.scalar().place(), message, help);
    return Optional.empty();
  }
}
